#pragma once

#include <engine/design.h>

namespace asleft {

/// What a word like `IN`, `BRIDGE EX` or `INJ` means of a cylinder: the lashes of a side with their bridge screws, those screws alone, its
/// injector or its decompressor.
struct PointGroup {
    PointKind kind = PointKind::Lash;
    Side side = Side::Intake;
    bool operator==(const PointGroup &) const = default;
};

/// The group's adjusters at one cylinder, in the order of EngineDesign::adjusters(); none if the engine has no such thing.
std::vector<AdjusterRef> pointsOf(const EngineDesign &design, PointGroup group, Cylinder cylinder);

/// The group a word alone means; nothing if it means none.
std::optional<PointGroup> groupNamed(std::string_view word);
/// Whether the word says that the screws of bridges come, and of which side the next word tells.
bool isBridgeWord(std::string_view word);

/// Some adjusters of one cylinder and the group they were named by.
struct NamedPoints {
    PointGroup group;
    std::vector<AdjusterRef> points;
    bool holds = true; ///< whether labels behind it mean the same group
};

/// A cylinder's label behind a group: all the group has there; a label and a letter, as in `3a`: one of several. Nothing if it is neither.
std::optional<NamedPoints> pointsLabelled(const EngineDesign &design, PointGroup group, std::string_view label);
/// `I3a`, `BE3`, the short name of one adjuster; or `IN3`, `INJ3`, a group's word with a label straight behind it.
std::optional<NamedPoints> pointsGlued(const EngineDesign &design, std::string_view word);

/// The cylinder in a word like `E9` that the engine does not have, or in one like `9` where a label may stand alone; nothing if the word
/// is not made that way.
std::optional<std::string_view> unknownCylinderIn(const EngineDesign &design, std::string_view word, bool labelMayStandAlone);

} // namespace asleft
