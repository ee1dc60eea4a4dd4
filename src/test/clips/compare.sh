#!/bin/sh
# The same rules and the same facts in our engine and in CLIPS: the same firings, and how long each takes.
# Run from the root of the project after `mvn -q -Pbench test-compile`; needs the command clips. Argument: how many rules.
set -eu
rules=${1:-1400}
out=target/yardstick
mkdir -p "$out"
classpath=$(mvn -o -q dependency:build-classpath -Dmdep.outputFile=/dev/stdout -Dmdep.includeScope=test)
java -XX:+UseSerialGC -cp "target/bench-classes:target/classes:$classpath" crumbtrail.rules.YardstickExport "$out" "$rules" 2>/dev/null

cat > "$out/time.clp" <<'CLP'
(set-reset-globals FALSE)
(defglobal ?*rounds* = 10 ?*before* = 0)
(all-cases)
(bind ?*before* (time))
(loop-for-count ?*rounds* (all-cases))
(format t "CLIPS: %.1f microseconds a case%n" (/ (* 1000000 (- (time) ?*before*)) (* ?*rounds* ?*cases*)))
(open "fired.txt" fired "w")
(bind ?*told* fired)
(all-cases)
(close fired)
(exit)
CLP
(cd "$out" && { echo '(load* "rules.clp")'; echo '(load* "cases.clp")'; cat time.clp; } > run.clp && clips -f2 run.clp </dev/null)
sort "$out/fired.txt" | uniq -c | awk '{n=$1; sub(/^ *[0-9]+ /, ""); print $0 "\t" n}' | LC_ALL=C sort > "$out/fired-by-clips.txt"
LC_ALL=C sort -o "$out/fired-by-ours.txt" "$out/fired-by-ours.txt"
if cmp -s "$out/fired-by-ours.txt" "$out/fired-by-clips.txt"; then
  echo "The same firings: $(wc -l < "$out/fired-by-ours.txt") of rules on cases"
else
  echo "Not the same firings:"
  diff "$out/fired-by-ours.txt" "$out/fired-by-clips.txt" | head -20
  exit 1
fi
