#pragma once

#include <string>

namespace asleft {

/// A name for one act that no other act anywhere has, made before it is stored, so that storing it twice is harmless.
using Uid = std::string;

/// Where uids come from; injected, so that the demo garage is the same every time it is built.
class UidSource {
public:
    virtual ~UidSource() = default;
    virtual Uid next() = 0;
};

/// 32 hexadecimal digits from the system's random source.
class RandomUids final : public UidSource {
public:
    Uid next() override;
};

} // namespace asleft
