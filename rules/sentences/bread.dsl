# Every sentence that a rule may use, and what it means to the engine.
# What stands for {reading}, {sign}, {cause} and the like is checked against the catalogues while the project builds.
# A sentence that contains a shorter one stands above it.

[when]The {reading} is under {limit:[0-9.-]+} {unit:[^,"]+}=Reading(name == "{reading}", value < {limit})
[when]The {reading} is over {limit:[0-9.-]+} {unit:[^,"]+}=Reading(name == "{reading}", value > {limit})
[when]The {reading} is between {least:[0-9.-]+} {unit:[^,"0-9]+} and {most:[0-9.-]+} {unit2:[^,"]+}=Reading(name == "{reading}", value >= {least}, value <= {most})
[when]The {reading} is between {least:[0-9.-]+} and {most:[0-9.-]+} {unit:[^,"]+}=Reading(name == "{reading}", value >= {least}, value <= {most})
[when]The {reading} is far too low for this bread=Reading(name == "{reading}", farBelowUsual())
[when]The {reading} is far too high for this bread=Reading(name == "{reading}", farAboveUsual())
[when]The {reading} is low beyond all custom for this bread=Reading(name == "{reading}", belowAllCustom())
[when]The {reading} is high beyond all custom for this bread=Reading(name == "{reading}", aboveAllCustom())
[when]The {reading} is low for this bread=Reading(name == "{reading}", belowUsual())
[when]The {reading} is high for this bread=Reading(name == "{reading}", aboveUsual())
[when]The {reading} is usual for this bread=Reading(name == "{reading}", withinUsual())
[when]Nothing is known of the {reading}=not Reading(name == "{reading}")
[when]The baker looked for "{sign:[^"]+}" and did not see it=SignFact(name == "{sign}", !seen)
[when]The baker did not speak of "{sign:[^"]+}"=not SignFact(name == "{sign}")
[when]The baker clearly saw "{sign:[^"]+}" or "{sign2:[^"]+}" or "{sign3:[^"]+}" or "{sign4:[^"]+}" or "{sign5:[^"]+}" or "{sign6:[^"]+}"=SignFact(name == "{sign}" || name == "{sign2}" || name == "{sign3}" || name == "{sign4}" || name == "{sign5}" || name == "{sign6}", marked())
[when]The baker clearly saw "{sign:[^"]+}" or "{sign2:[^"]+}" or "{sign3:[^"]+}" or "{sign4:[^"]+}" or "{sign5:[^"]+}"=SignFact(name == "{sign}" || name == "{sign2}" || name == "{sign3}" || name == "{sign4}" || name == "{sign5}", marked())
[when]The baker clearly saw "{sign:[^"]+}" or "{sign2:[^"]+}" or "{sign3:[^"]+}" or "{sign4:[^"]+}"=SignFact(name == "{sign}" || name == "{sign2}" || name == "{sign3}" || name == "{sign4}", marked())
[when]The baker clearly saw "{sign:[^"]+}" or "{sign2:[^"]+}" or "{sign3:[^"]+}"=SignFact(name == "{sign}" || name == "{sign2}" || name == "{sign3}", marked())
[when]The baker clearly saw "{sign:[^"]+}" or "{sign2:[^"]+}"=SignFact(name == "{sign}" || name == "{sign2}", marked())
[when]The baker clearly saw "{sign:[^"]+}"=SignFact(name == "{sign}", marked())
[when]The baker saw "{sign:[^"]+}" or "{sign2:[^"]+}" or "{sign3:[^"]+}" or "{sign4:[^"]+}" or "{sign5:[^"]+}" or "{sign6:[^"]+}" or "{sign7:[^"]+}" or "{sign8:[^"]+}"=SignFact(name == "{sign}" || name == "{sign2}" || name == "{sign3}" || name == "{sign4}" || name == "{sign5}" || name == "{sign6}" || name == "{sign7}" || name == "{sign8}", seen)
[when]The baker saw "{sign:[^"]+}" or "{sign2:[^"]+}" or "{sign3:[^"]+}" or "{sign4:[^"]+}" or "{sign5:[^"]+}" or "{sign6:[^"]+}" or "{sign7:[^"]+}"=SignFact(name == "{sign}" || name == "{sign2}" || name == "{sign3}" || name == "{sign4}" || name == "{sign5}" || name == "{sign6}" || name == "{sign7}", seen)
[when]The baker saw "{sign:[^"]+}" or "{sign2:[^"]+}" or "{sign3:[^"]+}" or "{sign4:[^"]+}" or "{sign5:[^"]+}" or "{sign6:[^"]+}"=SignFact(name == "{sign}" || name == "{sign2}" || name == "{sign3}" || name == "{sign4}" || name == "{sign5}" || name == "{sign6}", seen)
[when]The baker saw "{sign:[^"]+}" or "{sign2:[^"]+}" or "{sign3:[^"]+}" or "{sign4:[^"]+}" or "{sign5:[^"]+}"=SignFact(name == "{sign}" || name == "{sign2}" || name == "{sign3}" || name == "{sign4}" || name == "{sign5}", seen)
[when]The baker saw "{sign:[^"]+}" or "{sign2:[^"]+}" or "{sign3:[^"]+}" or "{sign4:[^"]+}"=SignFact(name == "{sign}" || name == "{sign2}" || name == "{sign3}" || name == "{sign4}", seen)
[when]The baker saw "{sign:[^"]+}" or "{sign2:[^"]+}" or "{sign3:[^"]+}"=SignFact(name == "{sign}" || name == "{sign2}" || name == "{sign3}", seen)
[when]The baker saw "{sign:[^"]+}" or "{sign2:[^"]+}"=SignFact(name == "{sign}" || name == "{sign2}", seen)
[when]The baker saw "{sign:[^"]+}"=SignFact(name == "{sign}", seen)
[when]It happened that "{circumstance:[^"]+}" or "{circumstance2:[^"]+}" or "{circumstance3:[^"]+}" or "{circumstance4:[^"]+}" or "{circumstance5:[^"]+}" or "{circumstance6:[^"]+}"=CircumstanceFact(name == "{circumstance}" || name == "{circumstance2}" || name == "{circumstance3}" || name == "{circumstance4}" || name == "{circumstance5}" || name == "{circumstance6}")
[when]It happened that "{circumstance:[^"]+}" or "{circumstance2:[^"]+}" or "{circumstance3:[^"]+}" or "{circumstance4:[^"]+}" or "{circumstance5:[^"]+}"=CircumstanceFact(name == "{circumstance}" || name == "{circumstance2}" || name == "{circumstance3}" || name == "{circumstance4}" || name == "{circumstance5}")
[when]It happened that "{circumstance:[^"]+}" or "{circumstance2:[^"]+}" or "{circumstance3:[^"]+}" or "{circumstance4:[^"]+}"=CircumstanceFact(name == "{circumstance}" || name == "{circumstance2}" || name == "{circumstance3}" || name == "{circumstance4}")
[when]It happened that "{circumstance:[^"]+}" or "{circumstance2:[^"]+}" or "{circumstance3:[^"]+}"=CircumstanceFact(name == "{circumstance}" || name == "{circumstance2}" || name == "{circumstance3}")
[when]It happened that "{circumstance:[^"]+}" or "{circumstance2:[^"]+}"=CircumstanceFact(name == "{circumstance}" || name == "{circumstance2}")
[when]It happened that "{circumstance:[^"]+}"=CircumstanceFact(name == "{circumstance}")
[when]The bread is not "{tag:[^"]+}"=Bread(tags not contains "{tag}")
[when]The bread is "{tag:[^"]+}" or "{tag2:[^"]+}" or "{tag3:[^"]+}" or "{tag4:[^"]+}" or "{tag5:[^"]+}"=Bread(tags contains "{tag}" || tags contains "{tag2}" || tags contains "{tag3}" || tags contains "{tag4}" || tags contains "{tag5}")
[when]The bread is "{tag:[^"]+}" or "{tag2:[^"]+}" or "{tag3:[^"]+}" or "{tag4:[^"]+}"=Bread(tags contains "{tag}" || tags contains "{tag2}" || tags contains "{tag3}" || tags contains "{tag4}")
[when]The bread is "{tag:[^"]+}" or "{tag2:[^"]+}" or "{tag3:[^"]+}"=Bread(tags contains "{tag}" || tags contains "{tag2}" || tags contains "{tag3}")
[when]The bread is "{tag:[^"]+}" or "{tag2:[^"]+}"=Bread(tags contains "{tag}" || tags contains "{tag2}")
[when]The bread is "{tag:[^"]+}"=Bread(tags contains "{tag}")

[then]Suspect "{cause:[^"]+}" faintly=testimony.hear(drools.getMatch(), "{cause}", 3);
[then]Suspect "{cause:[^"]+}" plainly=testimony.hear(drools.getMatch(), "{cause}", 6);
[then]Suspect "{cause:[^"]+}" firmly=testimony.hear(drools.getMatch(), "{cause}", 10);
[then]Suspect "{cause:[^"]+}" surely=testimony.hear(drools.getMatch(), "{cause}", 20);
[then]Suspect "{cause:[^"]+}" beyond doubt=testimony.hear(drools.getMatch(), "{cause}", 30);
[then]Doubt "{cause:[^"]+}" faintly=testimony.hear(drools.getMatch(), "{cause}", -3);
[then]Doubt "{cause:[^"]+}" plainly=testimony.hear(drools.getMatch(), "{cause}", -6);
[then]Doubt "{cause:[^"]+}" firmly=testimony.hear(drools.getMatch(), "{cause}", -10);
[then]Clear "{cause:[^"]+}"=testimony.hear(drools.getMatch(), "{cause}", -20);
