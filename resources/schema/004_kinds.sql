-- Kinds that will grow are rows of look-up tables; what was noted may be about anything.
--
-- A kind was a word in a CHECK. It is now one that a small table has: a further kind is a further row there, and no rule has to be
-- replaced for it. The words are those of core/store. As before, no row of a large table is touched.

CREATE TABLE act_kind (
    word TEXT PRIMARY KEY NOT NULL CHECK (word <> '')
) {strict}
--;;
INSERT INTO act_kind (word) VALUES ('reading'), ('all_left'), ('nut_open'), ('crank'), ('plan'), ('step_done'), ('keep'), ('cautions'),
    ('check_again'), ('withdraw'), ('loosened'), ('ticks'), ('unticked'), ('joint_begun'), ('fitted'), ('accepted'), ('finding')
--;;
CREATE TABLE step_kind (
    word TEXT PRIMARY KEY NOT NULL CHECK (word <> '')
) {strict}
--;;
INSERT INTO step_kind (word) VALUES ('note'), ('valve_set'), ('loosen'), ('tighten')
--;;
CREATE TABLE tool_kind (
    word TEXT PRIMARY KEY NOT NULL CHECK (word <> '')
) {strict}
--;;
INSERT INTO tool_kind (word) VALUES ('feeler_set'), ('dial_gauge'), ('micrometer'), ('torque_set'), ('torque_read'), ('angle_gauge'),
    ('adapter'), ('socket')
--;;
CREATE TABLE caution_kind (
    word TEXT PRIMARY KEY NOT NULL CHECK (word <> '')
) {strict}
--;;
INSERT INTO caution_kind (word) VALUES ('stands_and_chocks'), ('neutral'), ('battery_off'), ('hands_clear'), ('hot_parts'),
    ('fuel_under_pressure'), ('fluid_and_fire'), ('springs'), ('two_turns_by_hand'), ('fluids_filled'), ('means_to_stop')
--;;
-- What may have moved a point that was set.
CREATE TABLE disturbance_kind (
    word TEXT PRIMARY KEY NOT NULL CHECK (word <> '')
) {strict}
--;;
INSERT INTO disturbance_kind (word) VALUES ('other'), ('head_tightened'), ('rockers_tightened'), ('timing_moved'), ('valve_or_seat_cut'),
    ('bridge_set')
--;;
CREATE TABLE spec_subject (
    word TEXT PRIMARY KEY NOT NULL CHECK (word <> '')
) {strict}
--;;
INSERT INTO spec_subject (word) VALUES ('intake_lash'), ('exhaust_lash'), ('lock_nut'), ('bridge_screw'), ('decompressor'), ('injector')
--;;
{append_only act_kind}
--;;
{append_only step_kind}
--;;
{append_only tool_kind}
--;;
{append_only caution_kind}
--;;
{append_only disturbance_kind}
--;;
{append_only spec_subject}
--;;
{widen act CHECK (kind IN ('reading', 'all_left', 'nut_open', 'crank', 'plan', 'step_done', 'keep', 'cautions', 'check_again', 'withdraw',
        'loosened', 'ticks', 'unticked', 'joint_begun', 'fitted', 'accepted', 'finding')) =>
    REFERENCES act_kind (word)}
--;;
{widen job_step CHECK (kind IN ('note', 'valve_set', 'loosen', 'tighten')) =>
    REFERENCES step_kind (word)}
--;;
{widen tool CHECK (kind IN ('feeler_set', 'dial_gauge', 'micrometer', 'torque_set', 'torque_read', 'angle_gauge', 'adapter', 'socket')) =>
    REFERENCES tool_kind (word)}
--;;
{widen job_step_caution CHECK (caution IN ('stands_and_chocks', 'neutral', 'battery_off', 'hands_clear', 'hot_parts',
        'fuel_under_pressure', 'fluid_and_fire', 'springs', 'two_turns_by_hand', 'fluids_filled', 'means_to_stop')) =>
    REFERENCES caution_kind (word)}
--;;
{widen fact_caution CHECK (caution IN ('stands_and_chocks', 'neutral', 'battery_off', 'hands_clear', 'hot_parts',
        'fuel_under_pressure', 'fluid_and_fire', 'springs', 'two_turns_by_hand', 'fluids_filled', 'means_to_stop')) =>
    REFERENCES caution_kind (word)}
--;;
{widen fact_check_again CHECK (cause IN ('other', 'head_tightened', 'rockers_tightened', 'timing_moved', 'valve_or_seat_cut', 'bridge_set')) =>
    REFERENCES disturbance_kind (word)}
--;;
{widen spec CHECK (subject IN ('intake_lash', 'exhaust_lash', 'lock_nut', 'bridge_screw', 'decompressor', 'injector')) =>
    REFERENCES spec_subject (word)}
--;;
-- What a line does to its joint is its title.
{widen job_step CHECK (title <> '') => CHECK (title <> '' OR joint IS NOT NULL)}
--;;
-- The page of a typed plan stands beside its manual; plans stored before have it behind the manual's name.
ALTER TABLE fact_plan ADD COLUMN page TEXT NOT NULL DEFAULT ''
--;;
-- What was noted is about one thing: fasteners of a joint, or the joint as a whole, as before; or a setting point, a line of the job, the
-- engine, the vehicle.
ALTER TABLE fact_finding ADD COLUMN point {int} REFERENCES setting_point (id)
--;;
ALTER TABLE fact_finding ADD COLUMN step {int} REFERENCES job_step (id)
--;;
ALTER TABLE fact_finding ADD COLUMN engine {int} REFERENCES engine (id)
--;;
ALTER TABLE fact_finding ADD COLUMN vehicle {int} REFERENCES vehicle (id)
--;;
{widen fact_finding NOT NULL REFERENCES joint (id) =>
    REFERENCES joint (id)
    CHECK ((joint IS NOT NULL) + (point IS NOT NULL) + (step IS NOT NULL) + (engine IS NOT NULL) + (vehicle IS NOT NULL) = 1)}
