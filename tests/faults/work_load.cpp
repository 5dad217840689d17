#include "work_load.h"

#include <algorithm>

namespace asleft::faults {

bool isLong()
{
    return std::getenv("ASLEFT_LONG") != nullptr;
}

std::vector<std::vector<NewAct>> transactionsOf(const Sample &sample, ActSeq reading)
{
    std::vector<std::vector<NewAct>> transactions(1);
    int count = 0;
    for (const Fact &fact : everyKindOfFact(sample, reading)) {
        if (transactions.back().size() > transactions.size() % 3)
            transactions.emplace_back();
        transactions.back().push_back(actOf(sample, "uid " + std::to_string(count++), fact));
    }
    return transactions;
}

std::vector<Acknowledged> appendAll(Database &database, const std::vector<NewAct> &acts)
{
    std::vector<Acknowledged> acknowledged;
    auto transaction = Transaction::begin(database);
    if (!transaction)
        return {};
    for (const NewAct &act : acts)
        if (const auto seq = append(*transaction, act))
            acknowledged.push_back({act.uid, *seq});
    if (!transaction->commit())
        return {};
    return acknowledged;
}

std::vector<Acknowledged> workOn(const std::string &path, const std::vector<std::vector<NewAct>> &transactions)
{
    std::vector<Acknowledged> all;
    const auto opened = Database::open(path);
    if (!opened)
        return all;
    for (const auto &acts : transactions) {
        const auto acknowledged = appendAll(**opened, acts);
        all.insert(all.end(), acknowledged.begin(), acknowledged.end());
    }
    return all;
}

namespace {

void expectEachOnce(Database &database, const Sample &sample, const std::vector<NewAct> &expected)
{
    const auto acts = jobActs(database, sample.job, sample.engine);
    ASSERT_TRUE(acts) << acts.error().arguments.back();
    for (const NewAct &act : expected)
        EXPECT_EQ(std::ranges::count(*acts, act, &Act::what), 1) << act.uid;
    EXPECT_EQ(acts->size(), expected.size() + 1) << "with the one that was there before";
}

} // namespace

void expectSound(const std::string &path, const Sample &sample, const std::vector<std::vector<NewAct>> &transactions,
                 const std::vector<Acknowledged> &acknowledged)
{
    const auto opened = Database::open(path);
    ASSERT_TRUE(opened) << opened.error().arguments.back();
    const Done sound = (*opened)->check();
    ASSERT_TRUE(sound) << sound.error().arguments.back();
    ASSERT_TRUE(jobActs(**opened, sample.job, sample.engine)) << "an act without all its facts";
    for (const auto &[uid, seq] : acknowledged)
        EXPECT_EQ(seqOf(**opened, uid).value(), seq) << uid << " was acknowledged";

    std::vector<NewAct> all;
    for (const auto &acts : transactions) {
        EXPECT_EQ(appendAll(**opened, acts).size(), acts.size());
        all.insert(all.end(), acts.begin(), acts.end());
    }
    for (const auto &[uid, seq] : acknowledged)
        EXPECT_EQ(seqOf(**opened, uid).value(), seq) << uid << " has moved";
    expectEachOnce(**opened, sample, all);
}

bool holdsOwnActs(Database &database, const JobRow &row)
{
    const auto acts = jobActs(database, row.id, row.engine).value();
    return std::ranges::count(acts, row.id, [](const Act &act) { return act.what.job; }) == countActs(database, row.id).value();
}

std::vector<store::SchemaStep> stepsWithOneMore()
{
    const auto known = store::builtInSteps();
    std::vector<store::SchemaStep> steps(known.begin(), known.end());
    steps.push_back({"more", "ALTER TABLE vehicle ADD COLUMN colour TEXT NOT NULL DEFAULT 'green'\n"
                             "--;;\n"
                             "CREATE TABLE tag (id {key}, text TEXT NOT NULL) {strict}\n"
                             "--;;\n"
                             "INSERT INTO tag (text) SELECT hex(randomblob(500)) FROM act, setting_point\n"
                             "--;;\n"
                             "CREATE INDEX tag_text ON tag (text)\n"});
    return steps;
}

} // namespace asleft::faults
