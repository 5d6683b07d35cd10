package org.straddle.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.change.util.ChangeRecorder;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.straddle.model.Event;

/** A file that nobody changed is not made again for a save, and what is written is never older than the event. */
class KeptBytesTest {

    private static final int EVENTS = 16;
    private static final int EDITS = 25;

    @TempDir
    Path temp;

    @Test
    void onlyWhatChangedIsMadeAgain() throws IOException {
        try (EventFolder folder = EventFolder.create(temp.resolve("event"), Example.event())) {
            Map<String, byte[]> first = folder.saving().files();
            folder.event().getSites().get(1).getSquares().add("HP84");
            Map<String, byte[]> second = folder.saving().files();
            assertEquals(first.keySet(), second.keySet());
            for (String name : first.keySet()) {
                if (name.equals("sites/cairn.xmi")) {
                    assertNotSame(first.get(name), second.get(name));
                } else {
                    assertSame(first.get(name), second.get(name), name);
                }
            }
        }
    }

    /** Whatever is edited, undone or pasted by chance, from fixed seeds. */
    @Test
    void neverOlderThanTheEvent() throws IOException {
        for (int seed = 0; seed < EVENTS; seed++) {
            Random random = new Random(seed);
            Path path = temp.resolve("event" + seed);
            EventFolder.create(path, Example.event(), FailingSteps.never()).close();
            try (EventFolder folder = EventFolder.open(path, FailingSteps.never())) {
                for (int i = 0; i < EDITS; i++) {
                    ChangeRecorder recorder = new ChangeRecorder(folder.event());
                    String edit = edit(folder.event(), random);
                    var change = recorder.endRecording();
                    recorder.dispose();
                    Map<String, byte[]> kept;
                    try {
                        kept = new HashMap<>(folder.saving().files());
                    } catch (EventFolderException refused) {
                        change.apply();
                        kept = new HashMap<>(folder.saving().files());
                    }
                    if (random.nextInt(4) == 0) {
                        folder.save();
                    }
                    ((EventResourceSet) folder.resourceSet()).forget();
                    Map<String, byte[]> fresh = folder.saving().files();
                    assertEquals(fresh.keySet(), kept.keySet(), edit + ", seed " + seed);
                    for (String name : fresh.keySet()) {
                        assertArrayEquals(fresh.get(name), kept.get(name), name + " after " + edit + ", seed " + seed);
                    }
                }
            }
        }
    }

    /** Sets a text or a number, links, adds a copy with the ids of its original, moves, or removes. */
    @SuppressWarnings("unchecked")
    private static String edit(Event event, Random random) {
        List<EObject> all = new ArrayList<>(List.of(event));
        event.eAllContents().forEachRemaining(all::add);
        EObject thing = all.get(random.nextInt(all.size()));
        List<EStructuralFeature> features = thing.eClass().getEAllStructuralFeatures().stream()
                .filter(each -> each.isChangeable() && !each.isDerived() && !(each instanceof EReference link && link.isContainer())).toList();
        EStructuralFeature feature = features.get(random.nextInt(features.size()));
        String words = thing.eClass().getName() + "." + feature.getName();
        if (feature instanceof EAttribute attribute) {
            Class<?> type = attribute.getEAttributeType().getInstanceClass();
            if (type == String.class && !attribute.isMany()) {
                thing.eSet(attribute, attribute.getName().equals("id") && random.nextBoolean() ? event.getSites().get(0).getId()
                        : "text " + random.nextInt(9));
            } else if (type == double.class) {
                thing.eSet(attribute, (double) random.nextInt(80));
            }
        } else if (feature.isMany()) {
            List<EObject> list = (List<EObject>) thing.eGet(feature);
            if (!list.isEmpty() && ((EReference) feature).isContainment()) {
                EObject one = list.get(random.nextInt(list.size()));
                switch (random.nextInt(3)) {
                    case 0 -> list.add(random.nextInt(list.size() + 1), EcoreUtil.copy(one));
                    case 1 -> list.add(0, list.remove(list.size() - 1));
                    default -> EcoreUtil.delete(one, true);
                }
            }
        } else if (!((EReference) feature).isContainment()) {
            List<EObject> others = all.stream().filter(((EReference) feature).getEReferenceType()::isInstance).toList();
            thing.eSet(feature, others.isEmpty() || random.nextInt(3) == 0 ? null : others.get(random.nextInt(others.size())));
        }
        return words;
    }

    /** What is given an identity when it is opened is not what its file says. */
    @Test
    void aThingWithoutAnIdentityIsWritten() throws IOException {
        Path path = temp.resolve("event");
        EventFolder.create(path, Example.event()).close();
        Path site = path.resolve("sites/cairn.xmi");
        String visit = "<visits visitor=\"Wren\"/>";
        Files.writeString(site, Files.readString(site).replace("</straddle:Site>", visit + "</straddle:Site>"));
        try (EventFolder folder = EventFolder.open(path)) {
            assertEquals(1, folder.event().getSites().get(1).getVisits().size());
            String id = folder.event().getSites().get(1).getVisits().get(0).getId();
            folder.save();
            assertTrue(Files.readString(site).contains(id), Files.readString(site));
        }
    }

    /** Remarks of people in a file stay where nothing else in it changed. */
    @Test
    void aFileThatNobodyChangedIsNotRewritten() throws IOException {
        Path path = temp.resolve("event");
        EventFolder.create(path, Example.event()).close();
        Path site = path.resolve("sites/cairn.xmi");
        Files.writeString(site, Files.readString(site).stripTrailing() + "\n<!-- by hand -->\n");
        String byHand = Files.readString(site);
        try (EventFolder folder = EventFolder.open(path)) {
            folder.event().setName("Changed");
            folder.save();
            assertEquals(byHand, Files.readString(site));
            folder.event().getSites().get(1).setName("Changed too");
            folder.save();
            assertEquals(-1, Files.readString(site).indexOf("by hand"));
        }
    }
}
