# shellcheck shell=bash
# Sourced by the benches: compiles them against the bundles of the built product, and starts one.
# shellcheck source=prepare.sh
. "$(dirname "${BASH_SOURCE[0]}")/../prepare.sh"

BENCHES="$RUN/benches"

# compile_benches: all at once into BENCHES, unless they lie there already.
compile_benches() {
    local sources files
    [ -d "$PRODUCT/plugins" ] || stop "Nothing is built yet. Run: releng/run --help"
    need_harness
    sources=$(inputs releng/bench "${PRODUCT#"$ROOT"/}/plugins")
    [ "$(cat "$BENCHES/from" 2>/dev/null)" != "$sources" ] || return 0
    rm -rf "$BENCHES"
    mkdir -p "$BENCHES"
    mapfile -t files < <(find "$ROOT"/releng/bench/*/src -name '*.java')
    # The harness writes code of its own for what it measures.
    compile_for_product "$BENCHES" -cp "$(bench_path)" -processor org.openjdk.jmh.generators.BenchmarkProcessor \
        "${files[@]}" || return 1
    echo "$sources" >"$BENCHES/from"
}
# Among the steps of packing is what runs several in one start.
bench_path() {
    printf '%s:' "$BENCHES" "$PACKING" "$HARNESS"/*.jar
    product_path
}

# bench [JAVA-OPTION…] CLASS ARGS…: starts a bench. Where BENCH_LIST names a file, what would be started goes there: a word
# a line, an empty line behind it.
bench() {
    local options=() libraries
    while [ "${1#-}" != "$1" ]; do
        options+=("$1")
        shift
    done
    if [ -n "${BENCH_LIST:-}" ]; then
        printf '%s\n' "$@" "" >"$BENCH_LIST"
        return
    fi
    need_java
    compile_benches
    libraries=$(echo "$PRODUCT"/plugins/com.google.ortools.linux.x86_64_*/ortools-linux-x86-64)
    java "${options[@]}" -Djava.library.path="$libraries" -cp "$(bench_path)" "$@"
}
