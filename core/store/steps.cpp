#include "steps.h"

#include "connection.h"
#include "dialect.h"
#include "widen.h"

namespace asleft::store {

std::vector<std::string> statementsOf(std::string_view step)
{
    const std::string text = writtenOut(step);
    std::vector<std::string> statements(1);
    std::size_t start = 0;
    while (start < text.size()) {
        const std::size_t end = std::min(text.find('\n', start), text.size());
        const std::string_view line = std::string_view(text).substr(start, end - start);
        if (line == statementMark)
            statements.emplace_back();
        else
            statements.back().append(line).append(1, '\n');
        start = end + 1;
    }
    return statements;
}

namespace {

Done take(Connection &connection, const std::string &statement)
{
    if (const auto widening = wideningIn(statement))
        return widen(connection, *widening);
    return connection.runOnce(statement);
}

} // namespace

Done takeStep(Connection &connection, std::span<const SchemaStep> steps, std::size_t index)
{
    for (const std::string &statement : statementsOf(steps[index].text))
        if (auto done = take(connection, statement); !done)
            return done;
    return connection.runOnce("PRAGMA user_version = " + std::to_string(index + 1));
}

} // namespace asleft::store
