#!/usr/bin/env bash
# Measures by hand how long 10,000 Masses of ten churches take to be tried, brought in by a job with
# its progress, and undone (results: docs/benchmarks.md). Run from the project's root after mvn
# package; needs curl. Starts a server on a fresh folder and stops it again.
set -euo pipefail
port=${PORT:-8099}
data=$(mktemp -d)
base=http://localhost:$port
export VESTIARY_ADMIN_TOKEN=measured-by-hand-$RANDOM$RANDOM
export VESTIARY_MOST_A_MINUTE_USER=100000000 VESTIARY_MOST_A_MINUTE_ADDRESS=100000000
auth="Authorization: Bearer $VESTIARY_ADMIN_TOKEN"

{
  echo slug,name,parish,place,title,setOutMinutes,clearanceMinutes
  for i in 0 1 2 3 4 5 6 7 8 9; do echo "c$i,Church $i,Parish,Town $i,Church of place $i,30,20"; done
} >"$data/churches.csv"
{
  echo church,date,time,minutes,concelebrants,deacons,note
  awk -v first="$(date -d '+30 days' +%s)" 'BEGIN { n = 0; split("08:00 12:05 18:30", hour, " ")
    for (day = 0; n < 10000; day++) for (church = 0; church < 10; church++) for (i = 1; i <= 3; i++)
      if (n++ < 10000) printf "c%d,%s,%s,45,%d,%d,%s\n", church,
        strftime("%Y-%m-%d", first + day * 86400), hour[i], n % 3, n % 2, (n % 7 ? "" : "Choir") }'
} >"$data/masses.csv"

VESTIARY_DATA=$data/server QUARKUS_HTTP_PORT=$port VESTIARY_DEMO=true \
  java -jar target/quarkus-app/quarkus-run.jar >"$data/log" 2>&1 &
server=$!
trap 'kill $server; wait $server 2>/dev/null || true; rm -rf "$data"' EXIT
until curl -sf -o /dev/null "$base/week"; do kill -0 $server || { cat "$data/log"; exit 1; }; sleep 0.2; done

send() { curl -sf -H "$auth" -H 'Content-Type: text/csv' --data-binary "@$data/$1.csv" "$base/api/imports?what=$1&$2"; }
field() { sed "s/.*\"$1\":\"\{0,1\}\([^,\"}]*\).*/\1/"; }
seconds() { awk -v a="$1" -v b="$(date +%s%3N)" 'BEGIN { printf "%.1f s\n", (b - a) / 1000 }'; }

send churches dryRun=false >/dev/null
for run in 1 2 3; do
  begun=$(date +%s%3N); send masses dryRun=true >/dev/null; echo "Tried: $(seconds "$begun")"
  begun=$(date +%s%3N)
  id=$(send masses 'dryRun=false&background=true' | field id)
  seen=""
  until [ "$(curl -sf -H "$auth" "$base/api/imports/$id" | tee "$data/now" | field status)" = done ]; do
    seen="$seen $(field progress <"$data/now")"; sleep 0.5
  done
  echo "Brought in: $(seconds "$begun"), progress seen:$seen"
  begun=$(date +%s%3N); curl -sf -X DELETE -H "$auth" "$base/api/imports/$id"; echo "Undone: $(seconds "$begun")"
done
