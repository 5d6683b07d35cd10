package org.straddle.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.straddle.safety.SiteNotation.day;
import static org.straddle.safety.SiteNotation.hazard;
import static org.straddle.safety.SiteNotation.policies;
import static org.straddle.safety.SiteNotation.site;
import static org.straddle.safety.SiteNotation.wires;

import java.io.DataInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.straddle.model.HazardKind;
import org.straddle.model.Site;

/** The program never calls anything safe: it does not stand there. */
class WordingTest {

    private static final Pattern PROMISE = Pattern.compile("\\b(un)?safe(r|st|ly)?\\b", Pattern.CASE_INSENSITIVE);

    @Test
    void noOutputPromisesAnything() {
        List<String> output = new ArrayList<>(List.of(SafetyNotes.DEFERENCE));
        for (String papers : List.of("", "visit ?", "visit 01-01; review 01-02 by A", "review 06-01 by A",
                "review 06-01 by A if dry", "review 06-01 by A until 06-02", "review 06-01 by A refuse",
                "visit 06-10; review 06-01 by A")) {
            Site site = site(papers);
            if (!site.getVisits().isEmpty()) {
                site.getVisits().get(0).setRoadSpeedKmh(90);
                site.getVisits().get(0).setAccessUntil(day("01-01"));
                site.getVisits().get(0).getOverheadLines().add(wires(40, 132, true));
                site.getVisits().get(0).getOverheadLines().add(wires(0, 0, false));
                for (HazardKind kind : HazardKind.values()) {
                    site.getVisits().get(0).getHazards().add(hazard(kind, "it", 12, null));
                    site.getVisits().get(0).getHazards().add(hazard(kind, "it", 0, null));
                }
            }
            SafetyNotes notes = SafetyNotes.of(site, day("06-20"), policies());
            output.addAll(notes.remarks());
            output.add(notes.state().word() + " " + notes.state().sentence());
            for (HazardNote note : notes.hazards()) {
                output.add(note.title() + " " + note.measureText());
                output.addAll(note.cautions());
            }
        }
        for (HeatLevel level : HeatLevel.values()) {
            output.add(level.words());
        }
        assertTrue(output.size() > 100, "a scan of little proves little");
        assertEquals(List.of(), output.stream().filter(text -> PROMISE.matcher(text).find()).toList());
    }

    /** Sentences that no case above brings out stand in the constant pool of the class that words them. */
    @ParameterizedTest
    @ValueSource(classes = {Cautions.class, HazardNote.class, HazardRating.class, HeatIndex.class, HeatLevel.class,
            Lightning.class, MastLimit.class, OverheadWires.class, RadioExposure.class, ReviewState.Expired.class, ReviewState.Missing.class,
            ReviewState.Fallen.class, ReviewState.Outdated.class, ReviewState.SignedOnce.class, SecondSignature.class, ReviewState.Refused.class, ReviewState.Valid.class, RiskMatrix.class, SafetyNotes.class,
            SignOff.class, SiteReviews.class, StoppingSight.class, WireSighting.class, WireVoltage.class})
    void noSentenceInTheCodeDoes(Class<?> kind) throws IOException {
        List<String> constants = constants(kind);
        assertFalse(constants.isEmpty());
        assertEquals(List.of(), constants.stream().filter(text -> PROMISE.matcher(text).find()).toList());
    }

    @Test
    void theScanFindsTheWordWhereItStands() throws IOException {
        assertTrue(constants(WordingTest.class).stream().anyMatch(text -> PROMISE.matcher(text).find()),
                "a safe bet");
    }

    /** All texts in a class file (Java Virtual Machine Specification, section 4.4). */
    private static List<String> constants(Class<?> kind) throws IOException {
        String file = kind.getName().substring(kind.getName().lastIndexOf('.') + 1) + ".class";
        List<String> texts = new ArrayList<>();
        try (DataInputStream in = new DataInputStream(kind.getResourceAsStream(file))) {
            in.skipNBytes(8);
            int count = in.readUnsignedShort();
            for (int i = 1; i < count; i++) {
                int tag = in.readUnsignedByte();
                switch (tag) {
                    case 1 -> texts.add(in.readUTF());
                    case 5, 6 -> {
                        in.skipNBytes(8);
                        i++;
                    }
                    case 7, 8, 16, 19, 20 -> in.skipNBytes(2);
                    case 15 -> in.skipNBytes(3);
                    case 3, 4, 9, 10, 11, 12, 17, 18 -> in.skipNBytes(4);
                    default -> throw new IOException("Unknown constant " + tag + " in " + file);
                }
            }
        }
        return texts;
    }
}
