-- Joints: fasteners that are tightened together, what they were found like and what they were tightened with; torque wrenches, adapters
-- and sockets beside the gauges.
--
-- Large tables are touched as in the second step only: columns without rules, rules by "widen". {real} is a double.

{widen tool CHECK (kind IN ('feeler_set', 'dial_gauge', 'micrometer')) =>
    CHECK (kind IN ('feeler_set', 'dial_gauge', 'micrometer', 'torque_set', 'torque_read', 'angle_gauge', 'adapter', 'socket'))}
--;;
-- The range a torque wrench is marked for.
ALTER TABLE tool ADD COLUMN least {int} CHECK (least >= 0)
--;;
ALTER TABLE tool ADD COLUMN least_unit TEXT CHECK (least_unit IN ('Nm', 'lbf.ft', 'lbf.in', 'kgf.m', 'kgf.cm'))
--;;
ALTER TABLE tool ADD COLUMN least_text TEXT
    CHECK ((least IS NULL) = (least_unit IS NULL) AND (least IS NULL) = (least_text IS NULL))
--;;
ALTER TABLE tool ADD COLUMN most {int} CHECK (most >= least)
--;;
ALTER TABLE tool ADD COLUMN most_unit TEXT CHECK (most_unit IN ('Nm', 'lbf.ft', 'lbf.in', 'kgf.m', 'kgf.cm'))
--;;
ALTER TABLE tool ADD COLUMN most_text TEXT
    CHECK ((most IS NULL) = (most_unit IS NULL) AND (most IS NULL) = (most_text IS NULL))
    CHECK ((most IS NULL) = (least IS NULL))
    CHECK (most IS NULL OR kind IN ('torque_set', 'torque_read'))
--;;
-- Percent of the reading, a fraction; NULL: by ISO 6789.
ALTER TABLE tool ADD COLUMN deviation_numerator {int} CHECK (deviation_numerator > 0)
--;;
ALTER TABLE tool ADD COLUMN deviation_denominator {int} CHECK (deviation_denominator > 0)
    CHECK ((deviation_denominator IS NULL) = (deviation_numerator IS NULL) AND (deviation_denominator IS NULL OR most IS NOT NULL))
--;;
ALTER TABLE tool ADD COLUMN deviation_text TEXT NOT NULL DEFAULT ''
--;;
-- A day of the calendar: YYYY-MM-DD. As it was when the wrench was entered; later ones stand in tool_calibration.
ALTER TABLE tool ADD COLUMN calibration_due TEXT CHECK (length(calibration_due) = 10)
    CHECK (calibration_due IS NULL OR most IS NOT NULL)
--;;
-- Of a torque wrench: from its drive to the grip mark.
ALTER TABLE tool ADD COLUMN lever_nm {int} CHECK (lever_nm > 0)
--;;
ALTER TABLE tool ADD COLUMN lever_unit TEXT CHECK (lever_unit IN ('mm', 'in', 'thou'))
--;;
ALTER TABLE tool ADD COLUMN lever_text TEXT
    CHECK ((lever_nm IS NULL) = (lever_unit IS NULL) AND (lever_nm IS NULL) = (lever_text IS NULL))
    CHECK (lever_nm IS NULL OR kind IN ('torque_set', 'torque_read'))
--;;
-- Of an adapter: from the middle of the drive to that of the fastener.
ALTER TABLE tool ADD COLUMN length_nm {int} CHECK (length_nm >= 0)
--;;
ALTER TABLE tool ADD COLUMN length_unit TEXT CHECK (length_unit IN ('mm', 'in', 'thou'))
--;;
ALTER TABLE tool ADD COLUMN length_text TEXT
    CHECK ((length_nm IS NULL) = (length_unit IS NULL) AND (length_nm IS NULL) = (length_text IS NULL))
    CHECK (length_nm IS NULL OR kind = 'adapter')
--;;
ALTER TABLE tool ADD COLUMN size TEXT NOT NULL DEFAULT ''
--;;
-- When a torque wrench is next due, said anew: the last row of a tool holds, whatever stands in its own; NULL: it is not known.
CREATE TABLE tool_calibration (
    id {key},
    tool {int} NOT NULL REFERENCES tool (id),
    due TEXT CHECK (length(due) = 10),
    at_ms {int} NOT NULL
) {strict}
--;;
CREATE INDEX tool_calibration_tool ON tool_calibration (tool, id)
--;;
CREATE TABLE joint (
    id {key},
    engine {int} NOT NULL REFERENCES engine (id)
) {strict}
--;;
CREATE INDEX joint_engine ON joint (engine, id)
--;;
-- What a person typed stands in the columns called text. Beside it stands what it was read as, written the house's way, so that no
-- older revision says something else to a program that reads or generates otherwise.
CREATE TABLE joint_revision (
    id {key},
    joint {int} NOT NULL REFERENCES joint (id),
    revision {int} NOT NULL CHECK (revision >= 1),
    name TEXT NOT NULL CHECK (name <> ''),
    thread_text TEXT NOT NULL,
    thread TEXT CHECK (thread <> ''),
    strength_text TEXT NOT NULL,
    strength TEXT CHECK (strength IN ('4.6', '4.8', '5.6', '5.8', '6.8', '8.8', '9.8', '10.9', '12.9', 'grade 2', 'grade 5', 'grade 8',
        'A2-70', 'A4-70')),
    pattern TEXT NOT NULL CHECK (pattern IN ('row', 'rows', 'circle', 'rectangle', 'cover', 'free')),
    order_text TEXT NOT NULL,
    tightening_order TEXT NOT NULL CHECK (tightening_order <> ''),
    order_generated {int} NOT NULL CHECK (order_generated IN (0, 1)),
    target_text TEXT NOT NULL,
    other_target_text TEXT NOT NULL,
    unit TEXT NOT NULL CHECK (unit IN ('Nm', 'lbf.ft', 'lbf.in', 'kgf.m', 'kgf.cm')),
    passes_text TEXT NOT NULL,
    passes TEXT NOT NULL CHECK (passes <> ''),
    settle TEXT NOT NULL CHECK (settle IN ('no', 'limiters', 'manual_says_so')),
    condition TEXT CHECK (condition IN ('dry', 'oiled', 'thread_lock', 'sealant', 'anti_seize')),
    finish TEXT NOT NULL CHECK (finish IN ('black', 'zinc', 'cadmium')),
    drive TEXT NOT NULL CHECK (drive IN ('unsaid', 'socket', 'spanner', 'hex_key', 'six_lobe', 'screwdriver')),
    drive_size TEXT NOT NULL,
    female TEXT CHECK (female IN ('iron', 'steel', 'aluminium', 'insert')),
    engagement TEXT NOT NULL,
    blind_hole {int} NOT NULL CHECK (blind_hole IN (0, 1)),
    single_use TEXT NOT NULL CHECK (single_use IN ('no', 'torque_to_yield', 'crush_washer')),
    manual TEXT NOT NULL,
    page TEXT NOT NULL,
    certainty TEXT NOT NULL CHECK (certainty IN ('read_in_manual', 'told_by_person', 'from_memory', 'assumed')),
    answered TEXT NOT NULL,
    UNIQUE (joint, revision)
) {strict}
--;;
-- The target; as spec_band. A joint that is tightened without one has none.
CREATE TABLE joint_band (
    joint_revision {int} NOT NULL REFERENCES joint_revision (id),
    place {int} NOT NULL CHECK (place IN (0, 1)),
    form TEXT NOT NULL CHECK (form IN ('plus_minus', 'range', 'at_least', 'at_most', 'nominal_only')),
    low {int},
    high {int},
    nominal {int},
    unit TEXT NOT NULL CHECK (unit IN ('Nm', 'lbf.ft', 'lbf.in', 'kgf.m', 'kgf.cm')),
    text TEXT NOT NULL,
    tolerance_assumed {int} NOT NULL CHECK (tolerance_assumed IN (0, 1)),
    PRIMARY KEY (joint_revision, place),
    CHECK (low IS NOT NULL OR high IS NOT NULL),
    CHECK (low IS NULL OR high IS NULL OR low <= high)
) {strict}
--;;
-- Where the fasteners sit, in the pattern's own unit; their numbers are the manual's. Thread and length as typed, '' where they are the
-- joint's.
CREATE TABLE joint_place (
    joint_revision {int} NOT NULL REFERENCES joint_revision (id),
    place {int} NOT NULL CHECK (place >= 0),
    number {int} NOT NULL CHECK (number BETWEEN 1 AND 999),
    x {real} NOT NULL CHECK (x BETWEEN -1000000 AND 1000000),
    y {real} NOT NULL CHECK (y BETWEEN -1000000 AND 1000000),
    thread TEXT NOT NULL,
    length TEXT NOT NULL,
    PRIMARY KEY (joint_revision, place),
    UNIQUE (joint_revision, number)
) {strict}
--;;
ALTER TABLE job_step ADD COLUMN joint {int} REFERENCES joint (id)
--;;
{widen job_step CHECK (kind IN ('note', 'valve_set')) =>
    CHECK (kind IN ('note', 'valve_set', 'loosen', 'tighten'))
    CHECK (joint IS NULL OR kind IN ('loosen', 'tighten'))}
--;;
-- What a line does to its joint is its title.
{widen job_step CHECK (title <> '') => CHECK (title <> '' OR joint IS NOT NULL)}
--;;
{widen act CHECK (kind IN ('reading', 'all_left', 'nut_open', 'crank', 'plan', 'step_done', 'keep', 'cautions', 'check_again', 'withdraw')) =>
    CHECK (kind IN ('reading', 'all_left', 'nut_open', 'crank', 'plan', 'step_done', 'keep', 'cautions', 'check_again', 'withdraw',
        'loosened', 'ticks', 'unticked', 'joint_begun', 'fitted', 'accepted', 'finding'))}
--;;
CREATE TABLE fact_loosened (
    act {int} PRIMARY KEY REFERENCES act (seq),
    joint {int} NOT NULL,
    revision {int} NOT NULL,
    how TEXT NOT NULL CHECK (how IN ('not_noted', 'measured', 'loose_by_feel', 'tight_by_feel', 'missing', 'broken', 'wrong_length')),
    torque {int} CHECK (torque >= 0),
    torque_unit TEXT CHECK (torque_unit IN ('Nm', 'lbf.ft', 'lbf.in', 'kgf.m', 'kgf.cm')),
    torque_text TEXT,
    tool {int} REFERENCES tool (id),
    note TEXT NOT NULL,
    FOREIGN KEY (joint, revision) REFERENCES joint_revision (joint, revision),
    CHECK ((torque IS NULL) = (torque_unit IS NULL) AND (torque IS NULL) = (torque_text IS NULL)),
    CHECK ((torque IS NOT NULL) = (how = 'measured'))
) {strict}
--;;
CREATE INDEX fact_loosened_joint ON fact_loosened (joint)
--;;
CREATE TABLE loosened_fastener (
    act {int} NOT NULL REFERENCES fact_loosened (act),
    place {int} NOT NULL CHECK (place >= 0),
    fastener {int} NOT NULL CHECK (fastener BETWEEN 1 AND 999),
    PRIMARY KEY (act, place),
    UNIQUE (act, fastener)
) {strict}
--;;
-- Ticked at one stroke. An adapter that changed what the fastener got is its length and angle, and the tool where it is on the rack;
-- with it goes the lever of the wrench.
CREATE TABLE fact_ticks (
    act {int} PRIMARY KEY REFERENCES act (seq),
    joint {int} NOT NULL,
    revision {int} NOT NULL,
    how TEXT NOT NULL CHECK (how IN ('by_hand', 'set_tool', 'read_tool', 'by_angle', 'by_feel')),
    tool {int} REFERENCES tool (id),
    setting {int} CHECK (setting >= 0),
    setting_unit TEXT CHECK (setting_unit IN ('Nm', 'lbf.ft', 'lbf.in', 'kgf.m', 'kgf.cm')),
    setting_text TEXT,
    reading {int} CHECK (reading >= 0),
    reading_unit TEXT CHECK (reading_unit IN ('Nm', 'lbf.ft', 'lbf.in', 'kgf.m', 'kgf.cm')),
    reading_text TEXT,
    adapter {int} REFERENCES tool (id),
    adapter_nm {int} CHECK (adapter_nm >= 0),
    adapter_angle {int},
    lever_nm {int} CHECK (lever_nm > 0),
    uncertainty {int} CHECK (uncertainty >= 0),
    out_of_range {int} NOT NULL CHECK (out_of_range IN (0, 1)),
    calibration_overdue {int} NOT NULL CHECK (calibration_overdue IN (0, 1)),
    reason TEXT NOT NULL,
    FOREIGN KEY (joint, revision) REFERENCES joint_revision (joint, revision),
    CHECK ((setting IS NULL) = (setting_unit IS NULL) AND (setting IS NULL) = (setting_text IS NULL)),
    CHECK ((reading IS NULL) = (reading_unit IS NULL) AND (reading IS NULL) = (reading_text IS NULL)),
    CHECK ((setting IS NOT NULL) = (how = 'set_tool')),
    CHECK ((reading IS NOT NULL) = (how = 'read_tool')),
    CHECK (tool IS NOT NULL OR how NOT IN ('set_tool', 'read_tool')),
    CHECK ((reason <> '') = (how = 'by_feel')),
    CHECK ((adapter_nm IS NULL) = (adapter_angle IS NULL)),
    CHECK (adapter_nm IS NOT NULL OR (adapter IS NULL AND lever_nm IS NULL)),
    CHECK (uncertainty IS NULL OR reading IS NOT NULL)
) {strict}
--;;
CREATE INDEX fact_ticks_joint ON fact_ticks (joint)
--;;
-- A round is 1 but where the pass is to settle.
CREATE TABLE tick (
    act {int} NOT NULL REFERENCES fact_ticks (act),
    place {int} NOT NULL CHECK (place >= 0),
    fastener {int} NOT NULL CHECK (fastener BETWEEN 1 AND 999),
    pass {int} NOT NULL CHECK (pass >= 0),
    round {int} NOT NULL CHECK (round >= 1),
    moved {int} NOT NULL CHECK (moved IN (0, 1)),
    PRIMARY KEY (act, place),
    UNIQUE (act, fastener)
) {strict}
--;;
CREATE TABLE fact_unticked (
    act {int} PRIMARY KEY REFERENCES act (seq),
    joint {int} NOT NULL REFERENCES joint (id)
) {strict}
--;;
CREATE INDEX fact_unticked_joint ON fact_unticked (joint)
--;;
CREATE TABLE unticked_place (
    act {int} NOT NULL REFERENCES fact_unticked (act),
    place {int} NOT NULL CHECK (place >= 0),
    fastener {int} NOT NULL CHECK (fastener BETWEEN 1 AND 999),
    pass {int} NOT NULL CHECK (pass >= 0),
    round {int} NOT NULL CHECK (round >= 1),
    PRIMARY KEY (act, place),
    UNIQUE (act, fastener, pass, round)
) {strict}
--;;
CREATE TABLE fact_joint_begun (
    act {int} PRIMARY KEY REFERENCES act (seq),
    joint {int} NOT NULL,
    revision {int} NOT NULL,
    FOREIGN KEY (joint, revision) REFERENCES joint_revision (joint, revision)
) {strict}
--;;
CREATE INDEX fact_joint_begun_joint ON fact_joint_begun (joint)
--;;
CREATE TABLE fact_fitted (
    act {int} PRIMARY KEY REFERENCES act (seq),
    joint {int} NOT NULL REFERENCES joint (id),
    fitted TEXT NOT NULL CHECK (fitted IN ('new', 'reused'))
) {strict}
--;;
CREATE INDEX fact_fitted_joint ON fact_fitted (joint)
--;;
CREATE TABLE fitted_fastener (
    act {int} NOT NULL REFERENCES fact_fitted (act),
    place {int} NOT NULL CHECK (place >= 0),
    fastener {int} NOT NULL CHECK (fastener BETWEEN 1 AND 999),
    PRIMARY KEY (act, place),
    UNIQUE (act, fastener)
) {strict}
--;;
CREATE TABLE fact_accepted (
    act {int} PRIMARY KEY REFERENCES act (seq),
    joint {int} NOT NULL REFERENCES joint (id),
    what TEXT NOT NULL CHECK (what IN ('by_feel', 'torque', 'unsettled', 'reused')),
    reason TEXT NOT NULL CHECK (reason <> '')
) {strict}
--;;
CREATE INDEX fact_accepted_joint ON fact_accepted (joint)
--;;
CREATE TABLE accepted_fastener (
    act {int} NOT NULL REFERENCES fact_accepted (act),
    place {int} NOT NULL CHECK (place >= 0),
    fastener {int} NOT NULL CHECK (fastener BETWEEN 1 AND 999),
    PRIMARY KEY (act, place),
    UNIQUE (act, fastener)
) {strict}
--;;
-- Fasteners of it, or none for the joint as a whole.
CREATE TABLE fact_finding (
    act {int} PRIMARY KEY REFERENCES act (seq),
    joint {int} NOT NULL REFERENCES joint (id),
    text TEXT NOT NULL CHECK (text <> '')
) {strict}
--;;
CREATE INDEX fact_finding_joint ON fact_finding (joint)
--;;
CREATE TABLE finding_fastener (
    act {int} NOT NULL REFERENCES fact_finding (act),
    place {int} NOT NULL CHECK (place >= 0),
    fastener {int} NOT NULL CHECK (fastener BETWEEN 1 AND 999),
    PRIMARY KEY (act, place),
    UNIQUE (act, fastener)
) {strict}
--;;
{append_only tool_calibration}
--;;
{append_only joint}
--;;
{append_only joint_revision}
--;;
{append_only joint_band}
--;;
{append_only joint_place}
--;;
{append_only fact_loosened}
--;;
{append_only loosened_fastener}
--;;
{append_only fact_ticks}
--;;
{append_only tick}
--;;
{append_only fact_unticked}
--;;
{append_only unticked_place}
--;;
{append_only fact_joint_begun}
--;;
{append_only fact_fitted}
--;;
{append_only fitted_fastener}
--;;
{append_only fact_accepted}
--;;
{append_only accepted_fastener}
--;;
{append_only fact_finding}
--;;
{append_only finding_fastener}
