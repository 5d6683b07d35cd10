package org.straddle.demo;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.List;

import org.straddle.exchange.ReadException;
import org.straddle.exchange.SourceFile;
import org.straddle.exchange.elements.ElementFile;
import org.straddle.exchange.elements.ElementSetReader;
import org.straddle.model.Access;
import org.straddle.model.Bird;
import org.straddle.model.BirdReport;
import org.straddle.model.BirdState;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.Link;
import org.straddle.model.OperatingPeriod;
import org.straddle.model.ReportKind;
import org.straddle.model.StraddleFactory;
import org.straddle.model.WorkMode;
import org.straddle.outlook.StoredElements;
import org.straddle.sky.ElementSet;

/**
 * The birds of the demo: invented, on synthetic low orbits. Catalogue numbers from 99001 on; no published set says
 * "(demo)". Their frequencies are invented too, spread over what the ITU Radio Regulations (article 5, 144-146 MHz and
 * 435-438 MHz by No. 5.282) give to the amateur-satellite service, away from the ends that crewed stations use.
 */
final class DemoBirds {

    /** The files of the elements folder, which lie beside this class. */
    static final List<String> ELEMENT_FILES = List.of("demo.tle", "petrel-5.omm");

    private static final Instant IMPORTED = Instant.parse("2027-06-17T19:00:00Z");

    private final Event event;

    private DemoBirds(Event event) {
        this.event = event;
    }

    static void addTo(Event event) {
        DemoBirds birds = new DemoBirds(event);
        birds.all();
        ELEMENT_FILES.forEach(birds::importElements);
    }

    private void all() {
        Bird tern = bird("Tern-1 (demo)", 99001, WorkMode.FM, BirdState.WORKING,
                link(145.930, 145.930, 94.8, false), link(437.215, 437.215, 0, false));
        report(tern, "2027-06-15T21:10:00Z", ReportKind.TWO_WAY_CONTACT, "Q1SKY");

        Bird fulmar = bird("Fulmar-2 (demo)", 99002, WorkMode.LINEAR, BirdState.WORKING,
                link(435.110, 435.150, 0, true), link(145.850, 145.890, 0, false));
        report(fulmar, "2027-06-14T10:42:00Z", ReportKind.TWO_WAY_CONTACT, "Q4RZB");

        Bird skua = bird("Skua-3 (demo)", 99003, WorkMode.FM, BirdState.INTERMITTENT,
                link(145.865, 145.865, 88.5, false), link(436.420, 436.420, 0, false));
        report(skua, "2027-06-10T08:31:00Z", ReportKind.HEARD, "Q3DUN");
        report(skua, "2027-06-13T19:02:00Z", ReportKind.HEARD, "Q6TST");

        Bird puffin = bird("Puffin-4 (demo)", 99004, WorkMode.LINEAR, BirdState.WORKING,
                link(145.900, 145.920, 0, true), link(436.610, 436.630, 0, false));
        puffin.setLitOnly(true);
        report(puffin, "2027-06-12T13:20:00Z", ReportKind.TWO_WAY_CONTACT, "Q2MRL");

        Bird petrel = bird("Petrel-5 (demo)", 99005, WorkMode.FM, BirdState.WORKING,
                link(145.945, 145.945, 141.3, false), link(435.470, 435.470, 0, false));
        period(petrel, "2027-06-18T06:00:00Z", "2027-06-19T18:00:00Z", "Switched on for the weekend");
        report(petrel, "2027-06-06T16:48:00Z", ReportKind.TWO_WAY_CONTACT, "Q7SND");

        Bird auk = bird("Auk-6 (demo)", 99006, WorkMode.FM, BirdState.NOT_WORKING,
                link(145.815, 145.815, 0, false), link(436.900, 436.900, 0, false));
        report(auk, "2027-06-09T07:55:00Z", ReportKind.NOT_HEARD, "Q0AAR");
    }

    private void importElements(String fileName) {
        try {
            ElementFile file = ElementSetReader.read(new SourceFile(fileName, bytes(fileName)));
            file.sets().forEach(set -> keep(set, fileName, file.origin()));
        } catch (ReadException e) {
            throw new IllegalStateException(e.getMessage(), e);
        }
    }

    /** A file of element sets as it comes with this class. */
    static byte[] bytes(String file) {
        try (InputStream stream = DemoBirds.class.getResourceAsStream(file)) {
            return stream.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void keep(ElementSet set, String file, String origin) {
        for (Bird bird : event.getBirds()) {
            if (bird.getCatalogueNumber() == set.catalogueNumber()) {
                bird.getElementSets().add(StoredElements.toBirdElements(set, file, origin, IMPORTED));
            }
        }
    }

    private Bird bird(String name, int catalogueNumber, WorkMode mode, BirdState state, Link uplink, Link downlink) {
        Bird bird = DemoIdentity.named(Fresh.bird(), "bird/" + name);
        bird.setName(name);
        bird.setCatalogueNumber(catalogueNumber);
        bird.setMode(mode);
        bird.setAccess(mode == WorkMode.LINEAR ? Access.PASSBAND : Access.SINGLE_CHANNEL);
        bird.setState(state);
        bird.setUplink(uplink);
        bird.setDownlink(downlink);
        event.getBirds().add(bird);
        return bird;
    }

    private static Link link(double lowMhz, double highMhz, double toneHz, boolean inverted) {
        Link link = Fresh.link(lowMhz, highMhz);
        link.setToneHz(toneHz);
        link.setInverted(inverted);
        return link;
    }

    private static void report(Bird bird, String at, ReportKind kind, String by) {
        BirdReport report = StraddleFactory.eINSTANCE.createBirdReport();
        report.setAt(Instant.parse(at));
        report.setKind(kind);
        report.setBy(by);
        bird.getReports().add(report);
    }

    private static void period(Bird bird, String from, String until, String note) {
        OperatingPeriod period = StraddleFactory.eINSTANCE.createOperatingPeriod();
        period.setFrom(Instant.parse(from));
        period.setUntil(Instant.parse(until));
        period.setNote(note);
        bird.getCalendar().add(period);
    }
}
