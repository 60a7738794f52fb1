#!/usr/bin/env bash
# Makes every run of runs.txt and keeps what it gave: exit code, both streams and every file. Of two records, made before and after a change,
# the second form tells what differs.
#
#   tests/record/record.sh PROGRAM FOLDER      PROGRAM is FeltNest.Cli.dll as built; FOLDER is made anew
#   tests/record/record.sh --compare OLD NEW   ends with code 1 where a byte differs
set -uo pipefail
here="$(cd "$(dirname "$0")" && pwd)"
shapes="$here/../../shapes"

if [ "${1:-}" = --compare ]; then
  diff -rq "$2" "$3" && echo "no byte differs"
  exit
fi

program="$(realpath "$1")"
rm -rf "$2"
mkdir -p "$2"
record="$(realpath "$2")"
work="$record/work"
mkdir -p "$work/spoiled"
cp -r "$shapes" "$work/shapes"
cd "$work" || exit 1

sed 's/"massG"/"masG"/' shapes/balls/type-2.json > spoiled/unknown-field.json
sed 's/"outerDiameterMm": [0-9.]*/"outerDiameterMm": "60"/' shapes/balls/type-2.json > spoiled/number.json
head -c 200 shapes/balls/type-2.json > spoiled/cut-off.json
sed '2s/,m,/,yd,/' shapes/demo/offers.csv > spoiled/offers.csv
sed 's/"lifeStrikes": [0-9]*/"lifeStrikes": -1/' shapes/demo/costs.json > spoiled/costs.json
sed 's/"lengthM": [0-9.]*/"lengthM": 0/' shapes/demo/rolls/roll-a17.json > spoiled/roll.json
printf 'u,v\n0,0\n100,100\n100,0\n0,100\n' > spoiled/crossing.csv

while IFS='|' read -r name words; do
  name="${name%% *}"
  case "$name" in ''|'#'*) continue ;; esac
  if [ "$name" = bad-layout ]; then sed 's/"gapMm": 4/"gapMm": 40/' output/type-2-w1500-g4/layout.json > spoiled/layout.json; fi
  if [ "$name" = bad-die ]; then sed 's/"feedMm": [0-9.]*/"feedMm": 1/' output/die/die.json > spoiled/die.json; fi
  # shellcheck disable=SC2086
  dotnet "$program" $words > "$record/$name.out" 2> "$record/$name.err" < /dev/null
  echo $? > "$record/$name.code"
done < "$here/runs.txt"

rm -rf "$work/shapes"
echo "$(ls "$record"/*.code | wc -l) runs, $(find "$work" -type f | wc -l) files"
