package org.straddle.exchange.maps;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** XML whose entities read another file, or swell to more than any memory holds. */
public final class EntityAttack {

    public static final List<String> GPX = List.of(gpx("<!ENTITY e SYSTEM \"file:///etc/passwd\">", "e"),
            gpx("<!ENTITY e0 \"boom\">" + IntStream.range(1, 60).mapToObj(
                    i -> "<!ENTITY e" + i + " \"" + ("&e" + (i - 1) + ";").repeat(10) + "\">").collect(Collectors.joining()), "e59"));

    private EntityAttack() {
    }

    private static String gpx(String entities, String used) {
        return "<!DOCTYPE gpx [" + entities + "]><gpx><wpt lat='1' lon='2'><name>&" + used + ";</name></wpt></gpx>";
    }
}
