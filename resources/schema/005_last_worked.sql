-- Which jobs were worked on last, without looking at the acts of all of them.
--
-- Nothing is known here that the journal does not say: seq is the job's last act, or, before it has one, the last act of the whole garage
-- when the job was opened. It is written with the act itself and can be made anew from the acts at any time.

CREATE TABLE job_worked (
    job {int} PRIMARY KEY REFERENCES job (id),
    seq {int} NOT NULL
) {strict}
--;;
INSERT INTO job_worked (job, seq)
    SELECT id, coalesce(last, max(last) OVER (ORDER BY id), 0)
    FROM (SELECT id, (SELECT max(seq) FROM act WHERE act.job = job.id) AS last FROM job)
--;;
CREATE INDEX job_worked_seq ON job_worked (seq, job)
--;;
CREATE INDEX job_engine ON job (engine, id)
--;;
-- What was last done at a setting point, whichever job it was of.
CREATE INDEX fact_nut_open_point ON fact_nut_open (point, act)
