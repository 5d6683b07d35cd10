# shellcheck shell=bash
# Sourced by releng/package: this commit, built in two clones in two places, has to give the same bytes.
need_java
TWICE="$RUN/twice"
rm -rf "$TWICE"
for place in one "another place"; do
    git clone -q "$ROOT" "$TWICE/$place/straddle"
    # The Maven that was fetched need not be fetched again.
    [ ! -d "$TOOLS" ] || cp -r "$TOOLS" "$TWICE/$place/straddle/.tools"
    "$TWICE/$place/straddle/releng/package"
done
if diff "$TWICE/one/straddle/out/packages/SHA256SUMS" "$TWICE/another place/straddle/out/packages/SHA256SUMS"; then
    rm -rf "$TWICE"
    say "Both builds give the same bytes."
else
    stop "The two builds differ; both lie in .run/twice."
fi
