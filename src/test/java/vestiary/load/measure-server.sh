#!/usr/bin/env bash
# Measures the packaged program by hand (results: docs/benchmarks.md). Run from the project's root
# after mvn package; needs curl and wrk. Starts a server on a fresh folder and stops it again.
set -euo pipefail
port=${PORT:-8099}
data=$(mktemp -d)
base=http://localhost:$port
export VESTIARY_ADMIN_TOKEN=measured-by-hand-$RANDOM$RANDOM
auth="Authorization: Bearer $VESTIARY_ADMIN_TOKEN"
# One client asks here as fast as it can, which people do not and the server would slow down.
export VESTIARY_MOST_A_MINUTE_USER=100000000 VESTIARY_MOST_A_MINUTE_ADDRESS=100000000
now() { date +%s%3N; }

start() {
  local begun; begun=$(now)
  VESTIARY_DATA=$data QUARKUS_HTTP_PORT=$port VESTIARY_DEMO=true \
    java -jar target/quarkus-app/quarkus-run.jar >"$data.log" 2>&1 &
  server=$!
  until curl -sf -o /dev/null "$base/week"; do
    kill -0 "$server" || { cat "$data.log"; exit 1; }
    sleep 0.02
  done
  echo "$1: $(($(now) - begun)) ms to the first page"
}
stop() { kill "$server"; wait "$server" 2>/dev/null || true; }
median() { sort -n | awk '{a[NR]=$1} END {printf "median %.1f, highest %.1f of %d\n", a[int((NR+1)/2)], a[NR], NR}'; }
times() { # number of requests, then curl's arguments: milliseconds, one a line
  local n=$1; shift
  for _ in $(seq "$n"); do curl -s -o /dev/null -w '%{time_total}\n' "$@"; done | awk '{print $1*1000}'
}

start "First start (database made, demo brought in)"; stop
for i in 1 2 3; do start "Later start $i"; stop; done
start "Server to be measured"

white=$(curl -s "$base/api/churches/sa/days?from=$(date +%F)&to=$(date -d '+13 days' +%F)" |
  tr '{' '\n' | awk -F'"' '/"date":/ {d=$4} /"colours":\["white"\]/ && !seen {print d; seen=1}')
mass='{"church":"sa","start":"'$white'T11:00","minutes":60,"concelebrants":3}'
id=$(curl -s -X POST -H "$auth" -H 'Content-Type: application/json' -d "$mass" "$base/api/masses" |
  sed 's/.*"id":"\([^"]*\)".*/\1/')

for path in week review "day/$white" year/2027 year/2027.ics year/2027.csv vestments "api/clashes?from=$white&to=$white" "api/churches/ht/days?from=2027-01-01&to=2027-12-31"; do
  wrk -t1 -c1 -d5s "$base/$path" >/dev/null
  echo "GET /$path, one after another, ms: $(times 200 "$base/$path" | median)"
done
echo "PUT a Mass, ms: $(times 100 -X PUT -H "$auth" -H 'Content-Type: application/json' -d "$mass" "$base/api/masses/$id" | median)"
echo "POST its form and follow to the page with its warnings, ms: $(times 100 -L -H "$auth" -d "church=sa&date=$white&time=11:00&minutes=60&concelebrants=3" "$base/masses/$id" | median)"
for c in 1 8 32; do
  echo "GET /week, $c connections:"
  wrk -t1 -c"$c" -d10s --latency "$base/week" | grep -E 'Requests/sec|99%|50%|Non-2xx' || true
done
stop
rm -rf "$data" "$data.log"
