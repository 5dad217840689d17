#pragma once

#include "bench_sheet.h"

#include <functional>

namespace asleft {

/// The journal of one job: its state, folded from the acts that were read, and the way of new acts into the file. It knows what other
/// computers write meanwhile, and which acts failed and may be on disk all the same. It tells nobody.
class JobJournal {
public:
    static Result<std::unique_ptr<JobJournal>> open(Garage &garage, JobId job);

    [[nodiscard]] const JobState &state() const { return m_state; }

    /// An act of here and now, whose uid is not known yet.
    [[nodiscard]] NewAct newAct(Fact fact, PersonId who, std::optional<ActSeq> withdraws = {}) const;
    /// Stores these acts, all or none, and takes them up; gives the last one. Of a bench sheet it is said which. An act that says the same
    /// as one that failed just before keeps the uid of that one, so that it is stored once. \pre at least one
    Result<ActSeq> store(std::vector<NewAct> acts, const std::optional<FilledSheet> &sheet = {});
    /// The acts of this sheet that failed just before; nullptr where it was not this sheet.
    [[nodiscard]] const std::vector<NewAct> *failedActs(const FilledSheet &sheet) const;

    /// Reads what is new in the file. What cannot be read now is read with the next.
    Done readOn();
    /// Reads on before something is taken back; gives the taking back, one that `isThis` knows, that failed before, if it was on disk.
    Result<std::optional<ActSeq>> readOnToTakeBack(const std::function<bool(const Fact &)> &isThis);
    /// The same act failed before and was on disk: whether it is its turn was asked then.
    [[nodiscard]] bool arrivedBefore(const NewAct &act) const;
    /// Reads the things the job speaks of once more.
    Done reloadFrame();

    /// Whether the state has changed since this was asked last.
    [[nodiscard]] bool takeNews() { return std::exchange(m_news, false); }

private:
    /// Acts whose commit failed: they may be on disk all the same, so their uids are used again.
    struct Failed {
        std::vector<NewAct> acts;
        std::optional<FilledSheet> sheet; ///< they were made from; empty: one act at the Bench
        bool arrived = false;             ///< they were on disk, and have been read since
    };

    JobJournal(Garage &garage, JobState state, std::int64_t version);
    Done readNew();
    Done readAllAnew();
    Done loadFrameAnew();
    [[nodiscard]] bool failedBefore(const NewAct &act) const;
    /// Adds acts that were just stored, nothing having been written by others before them.
    void takeUp(const std::vector<Act> &acts);
    void noteArrival(const std::vector<Act> &acts);

    Garage &m_garage;
    JobState m_state;
    std::int64_t m_version; ///< of the file when it was last read; other computers' commits change it
    ActSeq m_readUpTo{0};   ///< the last act read from the file
    bool m_stale = false;   ///< something in the file has changed and could not be read
    bool m_news = false;
    std::optional<Failed> m_failed;
};

} // namespace asleft
