# shellcheck shell=bash
# Sourced by the scripts beside it: finds or installs what a bare Debian machine with a JDK and Maven lacks.
# Sets MVN (a Maven that Tycho accepts). Everything that is fetched lies in .tools, which Git ignores.

ROOT=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
TOOLS="$ROOT/.tools"
RUN="$ROOT/.run"
MAVEN_VERSION=3.9.11

PRODUCTS="$ROOT/releng/org.straddle.product/target/products/org.straddle.product"
PRODUCT="$PRODUCTS/linux/gtk/x86_64"
BUILT="$ROOT/releng/org.straddle.product/target/built-from"

# Names, sizes and times of the files in some places of the repository, as a number.
inputs() {
    (cd "$ROOT" && find "$@" \
        \( -name target -o -name emf-gen -o -name '*.tests' -o -name '.polyglot*' -o -path '*/org.straddle.model.edit/icons' \
        -o -path '*/org.straddle.model.edit/plugin.properties' \) -prune \
        -o -type f -printf '%p %s %T@\n' | LC_ALL=C sort | cksum | tr ' ' -)
}

# What the product is made of.
product_inputs() { inputs pom.xml .mvn bundles features targets releng/org.straddle.product; }

is_built() { [ -d "$PRODUCT/plugins" ] && [ -f "$BUILT" ] && [ "$(product_inputs)" = "$(cat "$BUILT")" ]; }
mark_built() { product_inputs >"$BUILT"; }

say() { printf '%s\n' "$*" >&2; }
stop() { say "$*"; exit 2; }

# A build ends before the full compiler has paid for itself.
export MAVEN_OPTS="-XX:+UseSerialGC -XX:TieredStopAtLevel=1 ${MAVEN_OPTS:-}"

# One build at a time in a clone: two delete each other's files. Whoever has to wait is told for whom.
# lock_build WHO; what WHO starts keeps the lock, so that a build that outlives its script is waited for too.
lock_build() {
    mkdir -p "$RUN"
    command -v flock >/dev/null || return 0
    # Whoever started this holds it already.
    [ "${STRADDLE_LOCKED:-}" != "$RUN" ] || return 0
    exec 7<>"$RUN/build.lock"
    if ! flock -n 7; then
        local holder=another
        read -r holder <"$RUN/build.lock"
        say "Waiting for the build of $holder in this clone to end …"
        flock 7
    fi
    printf '%s (process %d)\n' "$1" $$ >"$RUN/build.lock"
    export STRADDLE_LOCKED=$RUN
}
unlock_build() {
    exec 7>&-
    unset STRADDLE_LOCKED
}

# The commit's time stands for the time of the build: equal commits give equal bytes.
stamp_build() {
    SOURCE_DATE_EPOCH=$(git -C "$ROOT" log -1 --format=%ct 2>/dev/null) || SOURCE_DATE_EPOCH=$(date +%s)
    export SOURCE_DATE_EPOCH
    local qualifier
    qualifier=$(date -u -d "@$SOURCE_DATE_EPOCH" +%Y%m%d%H%M)
    [ -z "$(git -C "$ROOT" status --porcelain 2>/dev/null)" ] || qualifier+=-changed
    STAMP=("-DforceContextQualifier=$qualifier"
        "-Dproject.build.outputTimestamp=$(date -u -d "@$SOURCE_DATE_EPOCH" +%Y-%m-%dT%H:%M:%SZ)")
}

# build_product MVN-ARGS… : builds without tests, under the lock.
build_product() {
    need_java
    need_maven
    stamp_build
    say "Building Straddle (the first time takes some minutes) …"
    mkdir -p "$RUN"
    (cd "$ROOT" && "$MVN" -B -ntp -T 2 clean package -Dmaven.test.skip=true "${STAMP[@]}" "$@") >"$RUN/build.log" 2>&1 || {
        grep -E '^\[ERROR\]' "$RUN/build.log" | grep -v 'osgi.platform' | head -n 20 >&2
        stop "The build failed; the whole log is in .run/build.log"
    }
    mark_built
}

# compile_packing: releng/packaging/src into PACKING, unless it lies there already.
PACKING="$RUN/packaging"
compile_packing() {
    local sources
    sources=$(inputs releng/packaging/src)
    [ "$(cat "$PACKING/from" 2>/dev/null)" != "$sources" ] || return 0
    rm -rf "$PACKING"
    mkdir -p "$PACKING"
    javac -J-XX:TieredStopAtLevel=1 -J-XX:+UseSerialGC -nowarn -proc:none -cp "$(packing_libraries)" -d "$PACKING" \
        "$ROOT"/releng/packaging/src/org/straddle/packaging/*.java || return 1
    echo "$sources" >"$PACKING/from"
}
packing_libraries() { printf '%s:' "$PRODUCT"/plugins/{picocli,org.eclipse.osgi}_*.jar; }

# pack STEP ARGS… [-- STEP ARGS…]… : steps of releng/packaging/src, in one start.
pack() {
    compile_packing || return 1
    java -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -cp "$PACKING:$(packing_libraries)" org.straddle.packaging.Pack "$@"
}

# The bundles of the built product as a class path. GeoTools comes last: it has an old copy of the model framework inside.
product_path() {
    printf '%s:' "$PRODUCT"/plugins/*.jar | sed -E 's|^(.*:)?([^:]*/geotools_[^:]*:)(.*)$|\1\3\2|'
}

# compile_for_product FOLDER [OPTION…] SOURCE… : classes that use the bundles of the built product. The first compiler alone, as in MAVEN_OPTS.
compile_for_product() {
    local folder=$1
    shift
    javac -J-XX:TieredStopAtLevel=1 -J-XX:+UseSerialGC -nowarn -Xlint:none --release 17 -encoding UTF-8 \
        -d "$folder" -cp "$(product_path)" "$@"
}

# make_application PRODUCT FOLDER: the folder that is packed and started.
make_application() {
    local step
    application_step "$1" "$2"
    pack "${step[@]}"
    add_start "$2"
}
# application_step PRODUCT FOLDER: sets step to the arguments of pack that make the folder, all but what starts it.
application_step() {
    step=(application "$1" "$2" "$ROOT/releng/packaging/licences.txt" "$ROOT/targets/org.straddle.target/org.straddle.target.target"
        "$PACKING/unsigned")
}
add_start() {
    mkdir -p "$1"
    cp "$ROOT/releng/packaging/straddle" "$ROOT/releng/packaging/logging.properties" "$1/"
    chmod 755 "$1/straddle"
}

need_java() {
    # shellcheck disable=SC2015 # both or stop
    command -v java >/dev/null && command -v javac >/dev/null ||
        stop "A JDK 17 or newer is missing. Run: apt-get install -y openjdk-17-jdk-headless"
    local major
    major=$(java -XshowSettings:properties -version 2>&1 | sed -n 's/^ *java.specification.version = //p')
    [ "${major%%.*}" -ge 17 ] || stop "Java $major is too old; a JDK 17 or newer is needed. Run: apt-get install -y openjdk-17-jdk-headless"
}
# Debian 12 brings Maven 3.8, on which Tycho fails; that Maven fetches a newer one as it would any other artifact.
need_maven() {
    command -v mvn >/dev/null || stop "Maven is missing. Run: apt-get install -y maven"
    local found
    found=$(mvn --version 2>/dev/null | sed -n 's/.*Apache Maven \([0-9]*\.[0-9]*\).*/\1/p' | head -n 1)
    if [ "$(printf '%s\n3.9\n' "$found" | sort -V | head -n 1)" = 3.9 ]; then
        MVN=mvn
        return
    fi
    MVN="$TOOLS/apache-maven-$MAVEN_VERSION/bin/mvn"
    [ -x "$MVN" ] && return
    say "Fetching Maven $MAVEN_VERSION through Maven ${found:-(unknown version)} …"
    mkdir -p "$TOOLS"
    (cd "$TOOLS" && mvn -B -q org.apache.maven.plugins:maven-dependency-plugin:3.6.1:unpack \
        -Dartifact=org.apache.maven:apache-maven:$MAVEN_VERSION:zip:bin -DoutputDirectory="$TOOLS" -Dproject.basedir="$TOOLS") >&2 ||
        stop "Maven $MAVEN_VERSION could not be fetched; see the lines above."
    [ -x "$MVN" ] || chmod +x "$MVN"
}

# What tests need beside the product, as the target names it, copied into TEST_LIBRARIES; Maven finds where it lies.
TEST_LIBRARIES="$TOOLS/test-libraries"
need_test_libraries() {
    local wanted
    wanted=$(grep -hoE '<dependency><groupId>(org\.junit|net\.jqwik|org\.opentest4j|org\.apiguardian|com\.github\.javaparser).*</dependency>' \
        "$ROOT"/targets/org.straddle.target/org.straddle.target.target | sort -u)
    [ "$(cat "$TEST_LIBRARIES/wanted" 2>/dev/null)" = "$wanted" ] && return
    rm -rf "$TEST_LIBRARIES"
    mkdir -p "$TEST_LIBRARIES"
    printf '%s\n' '<project><modelVersion>4.0.0</modelVersion><groupId>org.straddle</groupId><artifactId>test-libraries</artifactId>' \
        "<version>0</version><packaging>pom</packaging><dependencies>$wanted</dependencies></project>" >"$TEST_LIBRARIES/pom.xml"
    "$MVN" -B -q -f "$TEST_LIBRARIES/pom.xml" org.apache.maven.plugins:maven-dependency-plugin:3.6.1:copy-dependencies \
        -DexcludeTransitive=true -DoutputDirectory="$TEST_LIBRARIES" >&2 ||
        stop "The libraries that tests need could not be fetched; see the lines above."
    echo "$wanted" >"$TEST_LIBRARIES/wanted"
}

# The harness of the pass search's bench; its version stands in releng/bench/sky/pom.xml.
HARNESS="$TOOLS/harness-$(cksum <"$ROOT/releng/bench/sky/pom.xml" | tr ' ' -)"

need_harness() {
    [ -d "$HARNESS" ] && return
    [ -n "${MVN:-}" ] || need_maven
    say "Fetching the harness of the benches …"
    rm -rf "$HARNESS.part"
    "$MVN" -B -q -f "$ROOT/releng/bench/sky/pom.xml" org.apache.maven.plugins:maven-dependency-plugin:3.6.1:copy-dependencies \
        -DoutputDirectory="$HARNESS.part" >&2 || stop "The harness of the benches could not be fetched; see the lines above."
    mv "$HARNESS.part" "$HARNESS"
}

# need_packages PACKAGE… : Debian packages, installed when this user may, named otherwise.
need_packages() {
    command -v dpkg-query >/dev/null || { say "Not a Debian system: make sure that these are there: $*"; return; }
    local missing=() package as_root=()
    for package in "$@"; do
        dpkg-query -W -f='${Status}' "$package" 2>/dev/null | grep -q 'ok installed' || missing+=("$package")
    done
    [ ${#missing[@]} -eq 0 ] && return
    if [ "$(id -u)" -ne 0 ]; then
        if command -v sudo >/dev/null && sudo -n true 2>/dev/null; then
            as_root=(sudo -n)
        else
            stop "Missing: ${missing[*]}. Run: sudo apt-get update && sudo apt-get install -y ${missing[*]}"
        fi
    fi
    say "Installing ${missing[*]} …"
    { "${as_root[@]}" apt-get update -qq &&
        "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends "${missing[@]}"; } >&2 ||
        stop "apt could not install them. Run: apt-get update && apt-get install -y ${missing[*]}"
}
