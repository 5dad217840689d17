#include "band_reader.h"

namespace asleft {

namespace {

template <class Q>
class BandReader {
public:
    BandReader(std::string_view text, DecimalMark mark) : m_in(text), m_mark(mark) {}

    Result<ReadBand<Q>> read()
    {
        auto band = readForm();
        m_in.skipSpaces();
        if (band && !m_in.atEnd())
            return refuseRest(m_in, m_last);
        return band;
    }

private:
    Result<ReadBand<Q>> readForm()
    {
        if (takeWords("at", "least") || m_in.takeWord("min") || takeComparison(U'>', U'≥'))
            return readOneSided(BandForm::AtLeast);
        if (takeWords("at", "most") || m_in.takeWord("max") || takeComparison(U'<', U'≤'))
            return readOneSided(BandForm::AtMost);
        if (Scanner(m_in).take(U'±') || Scanner(m_in).take(U'+') || Scanner(m_in).takeWord("to"))
            return fail(ErrorKind::BandWithoutValue, m_in.text());
        const auto first = readNext();
        if (!first)
            return tl::unexpected(first.error());
        m_in.skipSpaces();
        return readAfter(*first);
    }

    Result<ReadBand<Q>> readOneSided(BandForm form)
    {
        const auto limit = readNext();
        if (!limit)
            return tl::unexpected(limit.error());
        return ReadBand<Q>{form, {*limit}};
    }

    Result<ReadBand<Q>> readAfter(const ReadValue<Q> &first)
    {
        if (takePlusMinus())
            return readTolerance(first);
        if (m_in.take(U'+'))
            return readUpperThenLower(first);
        if (m_in.take(U'-'))
            return readHighOrLowerThenUpper(first);
        if (m_in.takeWord("to"))
            return readHigh(first);
        return ReadBand<Q>{BandForm::NominalOnly, {first}};
    }

    Result<ReadBand<Q>> readTolerance(const ReadValue<Q> &nominal)
    {
        const auto tolerance = readNextOrPercent();
        if (!tolerance)
            return tl::unexpected(tolerance.error());
        return ReadBand<Q>{BandForm::PlusMinus, {nominal, *tolerance, *tolerance}};
    }

    Result<ReadBand<Q>> readUpperThenLower(const ReadValue<Q> &nominal)
    {
        const auto upper = readNextOrPercent();
        if (!upper)
            return tl::unexpected(upper.error());
        m_in.skipSpaces();
        if (!m_in.take(U'-'))
            return m_in.atEnd() ? fail(ErrorKind::BandWithoutValue, m_in.text()) : refuseRest(m_in, m_last);
        const auto lower = readNextOrPercent();
        if (!lower)
            return tl::unexpected(lower.error());
        return ReadBand<Q>{BandForm::PlusMinus, {nominal, *upper, *lower}};
    }

    /// Behind a dash: `0.20-0.30`, or the lower tolerance of `0.40 -0.02 +0.05`; only what follows tells them apart.
    Result<ReadBand<Q>> readHighOrLowerThenUpper(const ReadValue<Q> &first)
    {
        const Scanner behindDash = m_in;
        const auto second = readNextOrPercent();
        if (!second)
            return tl::unexpected(second.error());
        m_in.skipSpaces();
        if (!m_in.take(U'+')) {
            m_in = behindDash;
            return readHigh(first);
        }
        const auto upper = readNextOrPercent();
        if (!upper)
            return tl::unexpected(upper.error());
        return ReadBand<Q>{BandForm::PlusMinus, {first, *upper, *second}};
    }

    Result<ReadBand<Q>> readHigh(const ReadValue<Q> &low)
    {
        const auto high = readNext();
        if (!high)
            return tl::unexpected(high.error());
        return ReadBand<Q>{BandForm::Range, {low, *high}};
    }

    Result<ReadValue<Q>> readNext()
    {
        m_in.skipSpaces();
        if (m_in.atEnd())
            return fail(ErrorKind::BandWithoutValue, m_in.text());
        auto value = readValue<Q>(m_in, m_mark);
        if (value)
            m_last = *value;
        return value;
    }

    Result<ReadValue<Q>> readNextOrPercent()
    {
        auto value = readNext();
        if (!value || value->unit)
            return value;
        Scanner ahead = m_in;
        ahead.skipSpaces();
        if (!ahead.take(U'%'))
            return value;
        m_in = ahead;
        value->isPercent = true;
        m_last = *value;
        return value;
    }

    bool takePlusMinus()
    {
        if (m_in.take(U'±'))
            return true;
        Scanner ahead = m_in;
        if (!ahead.take(U'+'))
            return false;
        ahead.take(U'/');
        if (!ahead.take(U'-'))
            return false;
        m_in = ahead;
        return true;
    }

    bool takeComparison(char32_t sign, char32_t joined)
    {
        if (m_in.take(joined))
            return true;
        Scanner ahead = m_in;
        if (!ahead.take(sign) || !ahead.take(U'='))
            return false;
        m_in = ahead;
        return true;
    }

    bool takeWords(std::string_view first, std::string_view second)
    {
        Scanner ahead = m_in;
        if (!ahead.takeWord(first))
            return false;
        ahead.skipSpaces();
        if (!ahead.takeWord(second))
            return false;
        m_in = ahead;
        return true;
    }

    Scanner m_in;
    DecimalMark m_mark;
    ReadValue<Q> m_last; ///< what refuseRest() judges the text behind by
};

} // namespace

template <class Q>
Result<ReadBand<Q>> readBand(std::string_view text, DecimalMark mark)
{
    return BandReader<Q>(text, mark).read();
}

template Result<ReadBand<Length>> readBand(std::string_view, DecimalMark);
template Result<ReadBand<Torque>> readBand(std::string_view, DecimalMark);
template Result<ReadBand<Angle>> readBand(std::string_view, DecimalMark);

} // namespace asleft
