# shellcheck shell=bash
# Sourced by releng/package: the Debian package, for amd64.

# What the native libraries of the solver and the window ask for; a test compares with the libraries themselves.
DEPENDS='default-jre (>= 2:1.17) | java17-runtime, libc6 (>= 2.27), libgcc-s1, libstdc++6, libgtk-3-0t64 | libgtk-3-0'

# debian APPLICATION: the folder of the application for linux-x86_64, with share.
debian() {
    command -v dpkg-deb >/dev/null || { say "No Debian package: dpkg-deb is missing here."; return; }
    local root="$WORK/debian" installed
    mkdir -p "$root"/{DEBIAN,usr/bin,usr/lib,usr/share/{applications,mime/packages,doc/straddle,man/man1}}
    cp -r "$1" "$root/usr/lib/straddle"
    mv "$root/usr/lib/straddle/share/icons" "$root/usr/lib/straddle/share/bash-completion" "$root/usr/share/"
    for page in "$root"/usr/lib/straddle/share/man/man1/*.1; do
        gzip -9n <"$page" >"$root/usr/share/man/man1/${page##*/}.gz"
    done
    rm -r "$root/usr/lib/straddle/share"
    mv "$root/usr/lib/straddle/THIRD-PARTY.txt" "$root/usr/share/doc/straddle/"
    ln -s ../../share/doc/straddle/THIRD-PARTY.txt "$root/usr/lib/straddle/THIRD-PARTY.txt"
    ln -s ../lib/straddle/straddle "$root/usr/bin/straddle"
    cp "$SOURCES/straddle.desktop" "$root/usr/share/applications/"
    cp "$SOURCES/straddle-mime.xml" "$root/usr/share/mime/packages/straddle.xml"
    cp "$SOURCES/debian-copyright" "$root/usr/share/doc/straddle/copyright"
    printf 'straddle (%s) stable; urgency=low\n\n  * See README.md.\n\n -- %s  %s\n' "$VERSION" "$MAINTAINER" \
        "$(LC_ALL=C date -u -d "@$SOURCE_DATE_EPOCH" '+%a, %d %b %Y %H:%M:%S +0000')" |
        gzip -9n >"$root/usr/share/doc/straddle/changelog.gz"
    find "$root" -type d -exec chmod 755 {} +
    find "$root" -type f -exec chmod 644 {} +
    chmod 755 "$root/usr/lib/straddle/straddle"
    installed=$(du -sk --apparent-size --exclude=DEBIAN "$root" | cut -f 1)
    cat >"$root/DEBIAN/control" <<CONTROL
Package: straddle
Version: $VERSION
Architecture: amd64
Maintainer: $MAINTAINER
Installed-Size: $installed
Depends: $DEPENDS
Section: hamradio
Priority: optional
Description: planner for group satellite roves
 A club sends several small teams out by car to work satellites from Maidenhead
 squares that few others activate. Straddle keeps the event, finds the passes
 over each site's own horizon, proposes who goes where and works which pass,
 says when a plan is wrong and why, and publishes briefs and an announcement.
 .
 It works offline, in a window or from the command line.
CONTROL
    (cd "$root" && find usr -type f -printf '%P\n' | LC_ALL=C sort | sed 's|^|usr/|' | xargs -d '\n' md5sum >DEBIAN/md5sums)
    find "$root" -exec touch -h -d "@$SOURCE_DATE_EPOCH" {} +
    dpkg-deb --root-owner-group -Zgzip -z2 --build "$root" "$OUT/straddle_${VERSION}_amd64.deb" >/dev/null
}
