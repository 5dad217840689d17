-- Every engine, every way to measure: more layouts, more kinds of setting points, gauges beside feeler sets, turns from zero lash.
--
-- "widen", in braces, replaces a rule of a table by one that every row it holds obeys already (core/store/widen.h). No row is touched,
-- so a journal of a million acts takes no longer than an empty one; for the same reason the columns of fact_reading come without rules
-- of their own, which the table gets at the end. Nothing an older act says is said otherwise now: its checksum holds.

ALTER TABLE vehicle ADD COLUMN number TEXT NOT NULL DEFAULT ''
--;;
ALTER TABLE vehicle ADD COLUMN stand {int} NOT NULL DEFAULT 0 CHECK (stand IN (0, 1))
--;;
-- Engines that are in no vehicle are all in one place.
CREATE UNIQUE INDEX vehicle_stand ON vehicle (stand) WHERE stand = 1
--;;
-- The first reading of another meter than before.
ALTER TABLE meter_reading ADD COLUMN replaced {int} NOT NULL DEFAULT 0 CHECK (replaced IN (0, 1))
--;;
-- What was the table of feeler sets is that of everything lengths are measured with: rows, keys and what refers to them stay.
ALTER TABLE feeler_set RENAME TO tool
--;;
ALTER TABLE feeler_leaf RENAME COLUMN feeler_set TO tool
--;;
ALTER TABLE tool ADD COLUMN kind TEXT NOT NULL DEFAULT 'feeler_set' CHECK (kind IN ('feeler_set', 'dial_gauge', 'micrometer'))
--;;
ALTER TABLE tool ADD COLUMN error_nm {int} CHECK (error_nm >= 0)
--;;
ALTER TABLE tool ADD COLUMN error_unit TEXT CHECK (error_unit IN ('mm', 'in', 'thou'))
--;;
ALTER TABLE tool ADD COLUMN error_text TEXT
    CHECK ((error_nm IS NULL) = (error_unit IS NULL) AND (error_nm IS NULL) = (error_text IS NULL))
--;;
ALTER TABLE tool ADD COLUMN resolution_nm {int} CHECK (resolution_nm >= 0)
--;;
ALTER TABLE tool ADD COLUMN resolution_unit TEXT CHECK (resolution_unit IN ('mm', 'in', 'thou'))
--;;
ALTER TABLE tool ADD COLUMN resolution_text TEXT
    CHECK ((resolution_nm IS NULL) = (resolution_unit IS NULL) AND (resolution_nm IS NULL) = (resolution_text IS NULL))
--;;
-- How this shop decides; one row.
CREATE TABLE shop_rule (
    one {int} PRIMARY KEY CHECK (one = 1),
    decision TEXT NOT NULL CHECK (decision IN ('simple', 'with_uncertainty'))
) {strict}
--;;
INSERT INTO shop_rule (one, decision) VALUES (1, 'simple')
--;;
{widen engine CHECK (layout IN ('in_line', 'vee', 'flat')) =>
    CHECK (layout IN ('in_line', 'vee', 'flat', 'single', 'w', 'radial', 'opposed'))}
--;;
ALTER TABLE engine ADD COLUMN cycle TEXT NOT NULL DEFAULT 'four_stroke' CHECK (cycle IN ('four_stroke', 'two_stroke'))
--;;
-- The valves of a cylinder, as a person would type them; '' is one intake and one exhaust.
ALTER TABLE engine ADD COLUMN valves TEXT NOT NULL DEFAULT ''
--;;
ALTER TABLE engine ADD COLUMN bridged {int} NOT NULL DEFAULT 0 CHECK (bridged IN (0, 1))
--;;
ALTER TABLE engine ADD COLUMN bridge_screws {int} NOT NULL DEFAULT 0 CHECK (bridge_screws IN (0, 1))
--;;
ALTER TABLE engine ADD COLUMN injectors {int} NOT NULL DEFAULT 0 CHECK (injectors IN (0, 1))
--;;
ALTER TABLE engine ADD COLUMN decompressors {int} NOT NULL DEFAULT 0 CHECK (decompressors IN (0, 1))
--;;
-- Teeth of ring gear and pinion; '' where the crank is not turned that way.
ALTER TABLE engine ADD COLUMN barring TEXT NOT NULL DEFAULT ''
--;;
-- The arc of a second exhaust lift, and that of the injectors, from a cylinder's own firing dead centre.
ALTER TABLE engine ADD COLUMN exhaust_again_starts {int}
--;;
ALTER TABLE engine ADD COLUMN exhaust_again_ends {int} CHECK ((exhaust_again_starts IS NULL) = (exhaust_again_ends IS NULL))
--;;
ALTER TABLE engine ADD COLUMN injector_starts {int}
--;;
ALTER TABLE engine ADD COLUMN injector_ends {int} CHECK ((injector_starts IS NULL) = (injector_ends IS NULL))
--;;
ALTER TABLE engine ADD COLUMN adjuster_kind TEXT NOT NULL DEFAULT 'screw' CHECK (adjuster_kind IN ('screw', 'hydraulic'))
--;;
ALTER TABLE engine ADD COLUMN bleed_down TEXT NOT NULL DEFAULT ''
--;;
-- An adjuster is its cylinder and one word. The words of old, "intake" and "exhaust", are the first lash of their side.
ALTER TABLE setting_point RENAME COLUMN side TO adjuster
--;;
ALTER TABLE plan_point RENAME COLUMN side TO adjuster
--;;
ALTER TABLE plan_unreached RENAME COLUMN side TO adjuster
--;;
{widen setting_point CHECK (adjuster IN ('intake', 'exhaust')) =>
    CHECK (adjuster IN ('intake', 'intake_2', 'intake_3', 'exhaust', 'exhaust_2', 'exhaust_3', 'exhaust_4',
        'intake_bridge', 'exhaust_bridge', 'exhaust_bridge_2', 'decompressor', 'injector'))}
--;;
{widen plan_point CHECK (adjuster IN ('intake', 'exhaust')) =>
    CHECK (adjuster IN ('intake', 'intake_2', 'intake_3', 'exhaust', 'exhaust_2', 'exhaust_3', 'exhaust_4',
        'intake_bridge', 'exhaust_bridge', 'exhaust_bridge_2', 'decompressor', 'injector'))}
--;;
{widen plan_unreached CHECK (adjuster IN ('intake', 'exhaust')) =>
    CHECK (adjuster IN ('intake', 'intake_2', 'intake_3', 'exhaust', 'exhaust_2', 'exhaust_3', 'exhaust_4',
        'intake_bridge', 'exhaust_bridge', 'exhaust_bridge_2', 'decompressor', 'injector'))}
--;;
{widen spec CHECK (subject IN ('intake_lash', 'exhaust_lash', 'lock_nut')) =>
    CHECK (subject IN ('intake_lash', 'exhaust_lash', 'lock_nut', 'bridge_screw', 'decompressor', 'injector'))}
--;;
-- Limits are torques for a lock nut, else lengths or, where the unit is one of an angle, turns from zero lash.
{widen spec_band CHECK (unit IN ('mm', 'in', 'thou', 'Nm', 'lbf.ft', 'lbf.in', 'kgf.m', 'kgf.cm')) =>
    CHECK (unit IN ('mm', 'in', 'thou', 'Nm', 'lbf.ft', 'lbf.in', 'kgf.m', 'kgf.cm', 'deg', 'turn'))}
--;;
-- What a cylinder is at, dead centre or not; the column is still called by the strokes it began with.
{widen turning_table_line CHECK (stroke IN ('compression', 'overlap')) =>
    CHECK (stroke IN ('compression', 'overlap', 'exhaust_opens', 'intake_closes', 'intake_fully_open', 'exhaust_fully_open'))}
--;;
{widen plan_position CHECK (stroke IN ('compression', 'overlap')) =>
    CHECK (stroke IN ('compression', 'overlap', 'exhaust_opens', 'intake_closes', 'intake_fully_open', 'exhaust_fully_open'))}
--;;
{widen fact_plan CHECK (way IN ('two_positions', 'each_on_compression')) =>
    CHECK (way IN ('two_positions', 'each_on_compression', 'companion_at_overlap', 'opening_and_closing', 'fewest', 'rule_of_nine'))}
--;;
ALTER TABLE fact_check_again ADD COLUMN cause TEXT NOT NULL DEFAULT 'other'
    CHECK (cause IN ('other', 'head_tightened', 'rockers_tightened', 'timing_moved', 'valve_or_seat_cut', 'bridge_set'))
--;;
-- Turned on from zero lash by this angle.
ALTER TABLE fact_reading ADD COLUMN turned {int}
--;;
ALTER TABLE fact_reading ADD COLUMN turned_unit TEXT
--;;
ALTER TABLE fact_reading ADD COLUMN turned_text TEXT
--;;
-- The expanded uncertainty the reading was judged with; NULL where the value as read decided.
ALTER TABLE fact_reading ADD COLUMN uncertainty_nm {int}
--;;
-- Of the engine, counted from 0 degrees Celsius in the smallest unit of Temperature.
ALTER TABLE fact_reading ADD COLUMN temperature {int}
--;;
ALTER TABLE fact_reading ADD COLUMN temperature_unit TEXT
--;;
ALTER TABLE fact_reading ADD COLUMN temperature_text TEXT
--;;
ALTER TABLE fact_reading ADD COLUMN minutes_since_run {int}
--;;
{widen fact_reading CHECK (form IN ('exact', 'bracket', 'loose', 'tight', 'by_feel')) =>
    CHECK (form IN ('exact', 'bracket', 'loose', 'tight', 'by_feel', 'turned'))}
--;;
{widen fact_reading CHECK (value_nm IS NOT NULL OR form IN ('loose', 'tight', 'by_feel')) =>
    CHECK (value_nm IS NOT NULL OR form IN ('loose', 'tight', 'by_feel', 'turned'))}
--;;
{widen fact_reading CHECK (value_nm IS NULL OR form <> 'by_feel') =>
    CHECK (value_nm IS NULL OR form NOT IN ('by_feel', 'turned')),
    CHECK ((turned IS NOT NULL) = (form = 'turned')),
    CHECK (turned >= 0),
    CHECK (turned_unit IN ('deg', 'turn')),
    CHECK ((turned IS NULL) = (turned_unit IS NULL) AND (turned IS NULL) = (turned_text IS NULL)),
    CHECK (uncertainty_nm >= 0),
    CHECK (temperature_unit IN ('C', 'F')),
    CHECK ((temperature IS NULL) = (temperature_unit IS NULL) AND (temperature IS NULL) = (temperature_text IS NULL)),
    CHECK (minutes_since_run >= 0)}
