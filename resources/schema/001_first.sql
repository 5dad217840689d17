-- The first garage.
--
-- Statements are parted by a line of their own that says only "--;;". Words in braces are written out for the database at hand
-- (core/store/dialect.cpp). Lengths are nanometres, torques nanonewton-metres, moments milliseconds since 1970 UTC, angles the
-- smallest unit of Angle. A value's text and unit are those typed. `place` counts from 0 along a list.

CREATE TABLE vehicle (
    id {key},
    name TEXT NOT NULL CHECK (name <> ''),
    mark TEXT NOT NULL
) {strict}
--;;
CREATE TABLE meter_reading (
    id {key},
    vehicle {int} NOT NULL REFERENCES vehicle (id),
    unit TEXT NOT NULL CHECK (unit IN ('kilometre', 'mile', 'hour')),
    thousandths {int} NOT NULL CHECK (thousandths >= 0),
    text TEXT NOT NULL,
    at_ms {int} NOT NULL
) {strict}
--;;
CREATE INDEX meter_reading_latest ON meter_reading (vehicle, at_ms)
--;;
CREATE TABLE person (
    id {key},
    initials TEXT NOT NULL CHECK (initials <> ''),
    name TEXT NOT NULL
) {strict}
--;;
CREATE TABLE feeler_set (
    id {key},
    name TEXT NOT NULL CHECK (name <> ''),
    leaves_text TEXT NOT NULL
) {strict}
--;;
CREATE TABLE feeler_leaf (
    feeler_set {int} NOT NULL REFERENCES feeler_set (id),
    place {int} NOT NULL CHECK (place >= 0),
    nm {int} NOT NULL CHECK (nm > 0),
    unit TEXT NOT NULL CHECK (unit IN ('mm', 'in', 'thou')),
    text TEXT NOT NULL,
    PRIMARY KEY (feeler_set, place)
) {strict}
--;;
-- An engine is kept as the texts a person would type for it; cam angles are exact.
CREATE TABLE engine (
    id {key},
    name TEXT NOT NULL,
    layout TEXT NOT NULL CHECK (layout IN ('in_line', 'vee', 'flat')),
    cylinders {int} NOT NULL CHECK (cylinders BETWEEN 1 AND 24),
    firing_order TEXT NOT NULL,
    gaps TEXT NOT NULL,
    numbering TEXT NOT NULL,
    valve_order TEXT NOT NULL,
    rotation TEXT NOT NULL CHECK (rotation IN ('clockwise', 'anticlockwise')),
    intake_opens_before_tdc {int} NOT NULL,
    intake_closes_after_bdc {int} NOT NULL,
    exhaust_opens_before_bdc {int} NOT NULL,
    exhaust_closes_after_tdc {int} NOT NULL,
    ramp_allowance {int} NOT NULL,
    check_lift TEXT NOT NULL,
    cam_assumed {int} NOT NULL CHECK (cam_assumed IN (0, 1)),
    screw_pitch TEXT NOT NULL,
    screw_ratio TEXT NOT NULL
) {strict}
--;;
-- Which vehicle an engine is in: the newest row says.
CREATE TABLE engine_fit (
    id {key},
    engine {int} NOT NULL REFERENCES engine (id),
    vehicle {int} NOT NULL REFERENCES vehicle (id),
    fitted_ms {int} NOT NULL
) {strict}
--;;
CREATE INDEX engine_fit_engine ON engine_fit (engine, id)
--;;
CREATE INDEX engine_fit_vehicle ON engine_fit (vehicle, engine)
--;;
CREATE TABLE setting_point (
    id {key},
    engine {int} NOT NULL REFERENCES engine (id),
    cylinder {int} NOT NULL CHECK (cylinder >= 0),
    side TEXT NOT NULL CHECK (side IN ('intake', 'exhaust')),
    UNIQUE (engine, cylinder, side)
) {strict}
--;;
CREATE TABLE spec (
    id {key},
    engine {int} NOT NULL REFERENCES engine (id),
    subject TEXT NOT NULL CHECK (subject IN ('intake_lash', 'exhaust_lash', 'lock_nut')),
    revision {int} NOT NULL CHECK (revision >= 1),
    condition TEXT NOT NULL CHECK (condition IN ('cold', 'hot')),
    manual TEXT NOT NULL,
    page TEXT NOT NULL,
    certainty TEXT NOT NULL CHECK (certainty IN ('read_in_manual', 'told_by_person', 'from_memory', 'assumed')),
    UNIQUE (engine, subject, revision)
) {strict}
--;;
-- Place 0 is the band as printed first, place 1 the one of the other unit system. Limits are torques for a lock nut, else lengths.
CREATE TABLE spec_band (
    spec {int} NOT NULL REFERENCES spec (id),
    place {int} NOT NULL CHECK (place IN (0, 1)),
    form TEXT NOT NULL CHECK (form IN ('plus_minus', 'range', 'at_least', 'at_most', 'nominal_only')),
    low {int},
    high {int},
    nominal {int},
    unit TEXT NOT NULL CHECK (unit IN ('mm', 'in', 'thou', 'Nm', 'lbf.ft', 'lbf.in', 'kgf.m', 'kgf.cm')),
    text TEXT NOT NULL,
    tolerance_assumed {int} NOT NULL CHECK (tolerance_assumed IN (0, 1)),
    PRIMARY KEY (spec, place),
    CHECK (low IS NOT NULL OR high IS NOT NULL),
    CHECK (low IS NULL OR high IS NULL OR low <= high)
) {strict}
--;;
CREATE TABLE turning_table (
    id {key},
    engine {int} NOT NULL REFERENCES engine (id),
    revision {int} NOT NULL CHECK (revision >= 1),
    manual TEXT NOT NULL,
    page TEXT NOT NULL,
    certainty TEXT NOT NULL CHECK (certainty IN ('read_in_manual', 'told_by_person', 'from_memory', 'assumed')),
    UNIQUE (engine, revision)
) {strict}
--;;
CREATE TABLE turning_table_line (
    turning_table {int} NOT NULL REFERENCES turning_table (id),
    place {int} NOT NULL CHECK (place >= 0),
    cylinder TEXT NOT NULL,
    stroke TEXT NOT NULL CHECK (stroke IN ('compression', 'overlap')),
    points TEXT NOT NULL,
    PRIMARY KEY (turning_table, place)
) {strict}
--;;
CREATE TABLE job (
    id {key},
    vehicle {int} NOT NULL REFERENCES vehicle (id),
    engine {int} NOT NULL REFERENCES engine (id),
    title TEXT NOT NULL CHECK (title <> ''),
    opened_ms {int} NOT NULL
) {strict}
--;;
CREATE INDEX job_vehicle ON job (vehicle, id)
--;;
CREATE TABLE job_step (
    id {key},
    job {int} NOT NULL REFERENCES job (id),
    place {int} NOT NULL CHECK (place >= 0),
    kind TEXT NOT NULL CHECK (kind IN ('note', 'valve_set')),
    title TEXT NOT NULL CHECK (title <> ''),
    detail TEXT NOT NULL,
    before_gate TEXT NOT NULL CHECK (before_gate IN ('turning_the_crank', 'first_start', 'hand_over')),
    UNIQUE (job, place)
) {strict}
--;;
CREATE TABLE job_step_caution (
    job_step {int} NOT NULL REFERENCES job_step (id),
    place {int} NOT NULL CHECK (place >= 0),
    caution TEXT NOT NULL CHECK (caution IN ('stands_and_chocks', 'neutral', 'battery_off', 'hands_clear', 'hot_parts',
        'fuel_under_pressure', 'fluid_and_fire', 'springs', 'two_turns_by_hand', 'fluids_filled', 'means_to_stop')),
    PRIMARY KEY (job_step, place)
) {strict}
--;;
-- The journal. One row heads every act; what it says stands in the fact tables. The checksum covers the act and all its facts.
CREATE TABLE act (
    seq {key},
    uid TEXT NOT NULL UNIQUE CHECK (uid <> ''),
    job {int} NOT NULL REFERENCES job (id),
    who {int} NOT NULL REFERENCES person (id),
    seat TEXT NOT NULL,
    at_ms {int} NOT NULL,
    kind TEXT NOT NULL CHECK (kind IN ('reading', 'all_left', 'nut_open', 'crank', 'plan', 'step_done', 'keep', 'cautions', 'check_again', 'withdraw')),
    withdraws {int} REFERENCES act (seq) CHECK (withdraws < seq),
    checksum {int} NOT NULL,
    CHECK ((withdraws IS NOT NULL) = (kind = 'withdraw'))
) {strict}
--;;
CREATE INDEX act_job ON act (job, seq)
--;;
CREATE INDEX act_withdraws ON act (withdraws, seq) WHERE withdraws IS NOT NULL
--;;
-- A reading has one row; several points left at one stroke have one each.
CREATE TABLE fact_reading (
    act {int} NOT NULL REFERENCES act (seq),
    place {int} NOT NULL CHECK (place >= 0),
    point {int} NOT NULL REFERENCES setting_point (id),
    phase TEXT NOT NULL CHECK (phase IN ('as_found', 'as_left')),
    form TEXT NOT NULL CHECK (form IN ('exact', 'bracket', 'loose', 'tight', 'by_feel')),
    value_nm {int} CHECK (value_nm >= 0),
    value_unit TEXT CHECK (value_unit IN ('mm', 'in', 'thou')),
    value_text TEXT,
    next_nm {int} CHECK (next_nm > value_nm),
    next_unit TEXT CHECK (next_unit IN ('mm', 'in', 'thou')),
    next_text TEXT,
    judged_by {int} REFERENCES spec (id),
    tool {int} REFERENCES feeler_set (id),
    condition TEXT NOT NULL CHECK (condition IN ('cold', 'hot')),
    spec_leaf {int} NOT NULL CHECK (spec_leaf IN (0, 1)),
    out_of_place {int} NOT NULL CHECK (out_of_place IN (0, 1)),
    corrects {int} CHECK (corrects < act),
    PRIMARY KEY (act, place),
    UNIQUE (act, point),
    FOREIGN KEY (corrects, point) REFERENCES fact_reading (act, point),
    CHECK ((value_nm IS NULL) = (value_unit IS NULL) AND (value_nm IS NULL) = (value_text IS NULL)),
    CHECK ((next_nm IS NULL) = (next_unit IS NULL) AND (next_nm IS NULL) = (next_text IS NULL)),
    CHECK ((next_nm IS NOT NULL) = (form = 'bracket')),
    CHECK (value_nm IS NOT NULL OR form IN ('loose', 'tight', 'by_feel')),
    CHECK (value_nm IS NULL OR form <> 'by_feel')
) {strict}
--;;
CREATE INDEX fact_reading_point ON fact_reading (point, act)
--;;
CREATE TABLE fact_nut_open (
    act {int} PRIMARY KEY REFERENCES act (seq),
    point {int} NOT NULL REFERENCES setting_point (id)
) {strict}
--;;
-- Where the crank of an engine stands; NULL: nobody knows.
CREATE TABLE fact_crank (
    act {int} PRIMARY KEY REFERENCES act (seq),
    engine {int} NOT NULL REFERENCES engine (id),
    crank {int},
    how TEXT NOT NULL CHECK (how IN ('confirmed', 'turned'))
) {strict}
--;;
CREATE INDEX fact_crank_engine ON fact_crank (engine, act)
--;;
CREATE TABLE fact_plan (
    act {int} PRIMARY KEY REFERENCES act (seq),
    engine {int} NOT NULL REFERENCES engine (id),
    generated {int} NOT NULL CHECK (generated IN (0, 1)),
    way TEXT NOT NULL CHECK (way IN ('two_positions', 'each_on_compression')),
    source TEXT NOT NULL
) {strict}
--;;
CREATE TABLE plan_position (
    act {int} NOT NULL REFERENCES fact_plan (act),
    place {int} NOT NULL CHECK (place >= 0),
    cylinder {int} NOT NULL CHECK (cylinder >= 0),
    stroke TEXT NOT NULL CHECK (stroke IN ('compression', 'overlap')),
    crank {int} NOT NULL,
    PRIMARY KEY (act, place)
) {strict}
--;;
CREATE TABLE plan_point (
    act {int} NOT NULL,
    position {int} NOT NULL,
    place {int} NOT NULL CHECK (place >= 0),
    cylinder {int} NOT NULL CHECK (cylinder >= 0),
    side TEXT NOT NULL CHECK (side IN ('intake', 'exhaust')),
    margin {int} NOT NULL,
    PRIMARY KEY (act, position, place),
    FOREIGN KEY (act, position) REFERENCES plan_position (act, place)
) {strict}
--;;
CREATE TABLE plan_unreached (
    act {int} NOT NULL REFERENCES fact_plan (act),
    place {int} NOT NULL CHECK (place >= 0),
    cylinder {int} NOT NULL CHECK (cylinder >= 0),
    side TEXT NOT NULL CHECK (side IN ('intake', 'exhaust')),
    PRIMARY KEY (act, place)
) {strict}
--;;
CREATE TABLE fact_step_done (
    act {int} PRIMARY KEY REFERENCES act (seq),
    step {int} NOT NULL REFERENCES job_step (id)
) {strict}
--;;
CREATE TABLE fact_keep (
    act {int} PRIMARY KEY REFERENCES act (seq),
    reading {int} NOT NULL CHECK (reading < act),
    point {int} NOT NULL,
    reason TEXT NOT NULL,
    FOREIGN KEY (reading, point) REFERENCES fact_reading (act, point)
) {strict}
--;;
CREATE TABLE fact_caution (
    act {int} NOT NULL REFERENCES act (seq),
    place {int} NOT NULL CHECK (place >= 0),
    caution TEXT NOT NULL CHECK (caution IN ('stands_and_chocks', 'neutral', 'battery_off', 'hands_clear', 'hot_parts',
        'fuel_under_pressure', 'fluid_and_fire', 'springs', 'two_turns_by_hand', 'fluids_filled', 'means_to_stop')),
    PRIMARY KEY (act, place)
) {strict}
--;;
CREATE TABLE fact_check_again (
    act {int} PRIMARY KEY REFERENCES act (seq),
    why TEXT NOT NULL
) {strict}
--;;
CREATE TABLE check_again_point (
    act {int} NOT NULL REFERENCES fact_check_again (act),
    place {int} NOT NULL CHECK (place >= 0),
    point {int} NOT NULL REFERENCES setting_point (id),
    PRIMARY KEY (act, place)
) {strict}
--;;
-- What has judged something, and everything that happened, is added to and never changed.
{append_only meter_reading}
--;;
{append_only engine_fit}
--;;
{append_only spec}
--;;
{append_only spec_band}
--;;
{append_only turning_table}
--;;
{append_only turning_table_line}
--;;
{append_only act}
--;;
{append_only fact_reading}
--;;
{append_only fact_nut_open}
--;;
{append_only fact_crank}
--;;
{append_only fact_plan}
--;;
{append_only plan_position}
--;;
{append_only plan_point}
--;;
{append_only plan_unreached}
--;;
{append_only fact_step_done}
--;;
{append_only fact_keep}
--;;
{append_only fact_caution}
--;;
{append_only fact_check_again}
--;;
{append_only check_again_point}
