# Sourced by the scripts beside it: finds or installs what a bare Debian machine with a JDK and Maven lacks.
# Sets MVN (a Maven that Tycho accepts). Everything that is fetched lies in .tools, which Git ignores.

ROOT=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
TOOLS="$ROOT/.tools"
MAVEN_VERSION=3.9.11

PRODUCT="$ROOT/releng/org.straddle.product/target/products/org.straddle.product/linux/gtk/x86_64"
BUILT="$ROOT/releng/org.straddle.product/target/built-from"

# What the product is made of: names, sizes and times of all inputs.
inputs() {
    (cd "$ROOT" && find pom.xml .mvn bundles features targets releng/org.straddle.product \
        \( -name target -o -name emf-gen -o -name '*.tests' -o -name '.polyglot*' -o -path '*/org.straddle.model.edit/icons' \) -prune \
        -o -type f -printf '%p %s %T@\n' | LC_ALL=C sort | cksum)
}

is_built() { [ -d "$PRODUCT/plugins" ] && [ -f "$BUILT" ] && [ "$(inputs)" = "$(cat "$BUILT")" ]; }
mark_built() { inputs >"$BUILT"; }

say() { printf '%s\n' "$*" >&2; }
stop() { say "$*"; exit 2; }

need_java() {
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
