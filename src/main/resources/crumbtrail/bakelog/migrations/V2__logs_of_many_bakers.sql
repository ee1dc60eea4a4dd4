-- A log is read from end to end by number. Where many bakers share it, one baker's bakes lie far
-- apart in the table.
create index bake_owner_number on bake (owner_id, id);

-- A class looks for words and causes as a baker does.
alter table bake_word add column class_id bigint;
update bake_word
  set class_id = (select b.class_id from bake b where b.id = bake_word.bake_id);
create index bake_word_class_time on bake_word (class_id, word, baked desc, bake_id desc);

alter table bake_cause add column class_id bigint;
update bake_cause
  set class_id = (select b.class_id from bake b where b.id = bake_cause.bake_id);
create index bake_cause_class_time on bake_cause (class_id, cause, baked desc, bake_id desc);
create index bake_cause_class_standing on bake_cause (class_id, standing, cause);
