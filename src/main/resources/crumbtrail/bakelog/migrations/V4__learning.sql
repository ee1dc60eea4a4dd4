-- From when on the odds of a baker's kitchen are learnt; what was baked before counts no more.
alter table baker add column learns_from timestamp(0);

-- The last bake of a recipe that came out good is asked for without a look at all its others.
create index bake_recipe_outcome on bake (owner_id, recipe_key, outcome, baked desc, id desc);

-- A class studies a recipe as a baker does.
create index bake_class_recipe on bake (class_id, recipe_key, baked desc, id desc);

-- The latest bakes of which a cause was confirmed, from which a kitchen's odds are learnt.
create index bake_cause_judged on bake_cause (owner_id, standing, baked desc, bake_id desc);
