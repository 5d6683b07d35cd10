package org.straddle.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.time.Duration;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.straddle.model.Site;
import org.straddle.model.StraddleFactory;

/** Acceptances outlive new names of our classes, of their parts, and of things. */
class DigestTest {

    private record Before(double km, Duration time) {
    }

    private record Renamed(double lengthKm, Duration driving) {
    }

    @Test
    void namesInOurCodeAreNoFact() {
        Duration hour = Duration.ofHours(1);
        assertEquals(Digest.of("drive", new Before(70, hour)), Digest.of("drive", new Renamed(70, hour)));
        assertEquals(Digest.of("drive", List.of(new Before(70, hour))), Digest.of("drive", List.of(new Renamed(70, hour))));
        assertNotEquals(Digest.of("drive", new Before(70, hour)), Digest.of("drive", new Before(71, hour)));
        assertNotEquals(Digest.of("drive", Optional.of(70)), Digest.of("drive", Optional.empty()));
    }

    @Test
    void aThingIsTheSameUnderANewName() {
        Site site = StraddleFactory.eINSTANCE.createSite();
        site.setId("one");
        site.setName("before");
        String before = Digest.of("site", site);
        site.setName("after");
        assertEquals(before, Digest.of("site", site));
        site.setId("two");
        assertNotEquals(before, Digest.of("site", site));
    }
}
