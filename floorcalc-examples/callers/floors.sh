#!/bin/sh
# Plans a file, then asks a runner that is kept open. Usage: sh floors.sh floorcalc.jar
set -eu
jar=$1
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT

# The value of a field of the order, of a plan file or of a plan on one line.
order() {
  sed -n 's/.*"order": *{[^}]*"'"$1"'": *\([0-9]*\).*/\1/p' "$folder/answer"
}

# The texts of all fields of a name, one a line.
texts() {
  grep -o '"'"$1"'": *"\([^"\\]\|\\.\)*"' "$folder/answer" | sed 's/^[^:]*: *"//; s/"$//; s/\\\(.\)/\1/g'
}

show() {
  case $(texts format) in
    floorcalc-refusal/1)
      texts outcome # "refused", or "fault" where the program itself failed
      texts pointer >"$folder/pointers"
      texts message | paste -d '|' "$folder/pointers" - | sed 's/^\([^|]*\)|/  \1: /' ;;
    *)
      echo "$(texts title): $(order boardsUsed) boards, at least $(order boardsAtLeast); $(order packs) packs" ;;
  esac
}

hall() {
  printf '{"format": "floorcalc-job/1", "title": "Hall of %d mm (invented)",' "$1"
  printf '"board": {"length": 2200, "%s": 185, "thickness": 14, "perPack": 6, "construction": "engineered"},' "$2"
  printf '"rooms": [{"name": "Hall", "outline": [[0, 0], [%d, 0], [%d, 1500], [0, 1500]]}]}\n' "$1" "$1"
}

ask() {
  hall "$1" "$2" >&3
  IFS= read -r line <&4
  printf '%s\n' "$line" >"$folder/answer"
  show
}

# One file, one plan; where the exit code is not 0 the script ends.
java -jar "$jar" plan study.json --json >"$folder/answer"
show

# A conversation over two pipes: the hall grows until it takes more than 3 packs.
mkfifo "$folder/jobs" "$folder/answers"
java -jar "$jar" plan --lines <"$folder/jobs" >"$folder/answers" &
runner=$!
exec 3>"$folder/jobs" 4<"$folder/answers"
length=2500
ask "$length" coverWidth
while [ "$(order packs)" -le 3 ]; do
  length=$((length + 500))
  ask "$length" coverWidth
done

# A job with mistakes is refused, and the conversation goes on.
ask 3000 coverwidth
ask 3000 coverWidth
exec 3>&-
exit_code=0
wait "$runner" || exit_code=$?
echo "exit code $exit_code"
