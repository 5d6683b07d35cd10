package org.straddle.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.straddle.model.Event;
import org.straddle.model.Identified;
import org.straddle.model.Revision;
import org.straddle.model.StraddleFactory;

/**
 * Every attribute of the model with values at the ends of its type: refused once, when the event is opened, with file,
 * object, feature and what is allowed; and refused before they are saved.
 */
class ExtremeValuesTest {

    private static final Map<Class<?>, List<String>> EXTREMES = Map.of(
            double.class, List.of("NaN", "Infinity", "-Infinity", "1.7976931348623157E308", "-1.7976931348623157E308", "4.9E-324", "1e-320"),
            Double.class, List.of("NaN", "Infinity", "1.7976931348623157E308", "4.9E-324"),
            int.class, List.of("2147483647", "-2147483648"),
            java.time.Instant.class, List.of("+1000000000-12-31T23:59:59.999999999Z", "-1000000000-01-01T00:00:00Z", "0001-01-01T00:00:00Z"),
            java.time.LocalDate.class, List.of("+999999999-12-31", "-999999999-01-01"));

    @TempDir
    Path temp;
    private Path folder;
    /** What stands in the files of the event. */
    private final Map<String, byte[]> good = new HashMap<>();

    @BeforeEach
    void createFullEvent() throws IOException {
        folder = temp.resolve("event");
        Event event = Example.event();
        fill(event);
        EventFolder.create(folder, event, FailingSteps.never()).close();
    }

    /** At least one object in every containment. */
    private static void fill(EObject object) {
        for (EReference part : object.eClass().getEAllContainments()) {
            if (!object.eIsSet(part)) {
                EObject made = EcoreUtil.create(part.getEReferenceType());
                if (made instanceof Identified identified) {
                    identified.setId(EcoreUtil.generateUUID());
                }
                if (part.isMany()) {
                    @SuppressWarnings("unchecked")
                    List<EObject> parts = (List<EObject>) object.eGet(part);
                    parts.add(made);
                } else {
                    object.eSet(part, made);
                }
            }
        }
        List.copyOf(object.eContents()).forEach(ExtremeValuesTest::fill);
    }

    private static void set(EObject object, EAttribute attribute, String value) {
        Object made = EcoreUtil.createFromString(attribute.getEAttributeType(), value);
        object.eSet(attribute, attribute.isMany() ? List.of(made) : made);
    }

    /** The folder with one file as somebody would leave it who edits it. */
    private void openInMemory(EventResource edited) throws EventFolderException {
        Map<String, byte[]> files = new HashMap<>(good);
        files.put(edited.name(), edited.write());
        Limits.require(EventResourceSet.of(EventScan.scan(files::get)).event());
    }

    @Test
    void everyAttributeIsLookedAtWhenTheEventIsOpened() throws IOException {
        List<String> accepted = new ArrayList<>();
        TreeSet<String> tried = new TreeSet<>();
        Set<Class<?>> types = new HashSet<>();
        List<EAttribute> attributes = new ArrayList<>();
        try (EventFolder first = EventFolder.openReadOnly(folder)) {
            for (Resource each : first.resourceSet().getResources()) {
                String name = ((EventResource) each).name();
                good.put(name, Files.readAllBytes(folder.resolve(name)));
            }
            List<EObject> all = new ArrayList<>(List.of(first.event()));
            first.event().eAllContents().forEachRemaining(all::add);
            for (EObject object : all) {
                for (EAttribute attribute : object.eClass().getEAllAttributes()) {
                    if (!attributes.contains(attribute)) {
                        attributes.add(attribute);
                        tryAll(object, attribute, types, accepted, tried);
                    }
                }
            }
        }
        assertEquals(List.of(), accepted);
        assertTrue(tried.size() > 100, "attributes tried: " + tried.size());
        assertTrue(tried.containsAll(List.of("Revision.number", "Policies.roadSpeedKmh", "BirdElements.epoch", "Region.outline",
                "Event.firstDay", "Photo.latitudeDeg")), tried.toString());
    }

    /** @param types of which one attribute was tried on the disk: the others are in memory, where the same takes no time */
    private void tryAll(EObject object, EAttribute attribute, Set<Class<?>> types, List<String> accepted, TreeSet<String> tried)
            throws IOException {
        Class<?> type = attribute.getEAttributeType().getInstanceClass();
        if (type == boolean.class || attribute.getEAttributeType() instanceof EEnum || attribute.isID()
                || attribute.getName().equals("id")) {
            return;
        }
        String name = object.eClass().getName() + "." + attribute.getName();
        EventResource resource = (EventResource) object.eResource();
        boolean onDisk = types.add(type);
        Object before = object.eGet(attribute);
        Object kept = attribute.isMany() ? List.copyOf((List<?>) before) : before;
        for (String extreme : type == String.class ? List.of(longer(attribute, onDisk)) : EXTREMES.get(type)) {
            set(object, attribute, extreme);
            try {
                if (onDisk) {
                    Files.write(folder.resolve(resource.name()), resource.write());
                    EventFolder.openReadOnly(folder);
                } else {
                    openInMemory(resource);
                }
                accepted.add(name + " = " + extreme);
            } catch (EventFolderException e) {
                assertTrue(e.getMessage().lines().count() <= 2 && e.getMessage().length() < 600, e.getMessage());
                assertEquals(resource.name(), e.file(), e.getMessage());
                assertTrue(e.what().contains(attribute.getName()) && e.what().contains("allowed"), e.getMessage());
            }
        }
        object.eSet(attribute, kept);
        if (onDisk) {
            Files.write(folder.resolve(resource.name()), good.get(resource.name()));
        }
        tried.add(attribute.getEContainingClass().getName() + "." + attribute.getName());
    }

    /** One more than a text may have; where somebody really wrote the file, far more. */
    private static String longer(EAttribute attribute, boolean far) {
        return "x".repeat(far ? 3_000_000 : attribute.getName().equals("outline") ? 2_000_001 : 100_001);
    }

    @Test
    void anOutlineOfNestedCollectionsIsRefused() throws IOException {
        try (EventFolder event = EventFolder.open(folder)) {
            event.event().getRegions().get(0).setOutline("GEOMETRYCOLLECTION (".repeat(50_000) + ")".repeat(50_000));
            EventFolderException e = assertThrows(EventFolderException.class, event::save);
            assertTrue(e.what().contains("nested 50000 deep; allowed are 4"), e.getMessage());
        }
    }

    @Test
    void whatCouldNotBeOpenedAgainIsNotSaved() throws IOException {
        Map<String, String> before = FolderContent.of(folder);
        try (EventFolder event = EventFolder.open(folder)) {
            Revision revision = StraddleFactory.eINSTANCE.createRevision();
            revision.setNumber(Integer.MAX_VALUE);
            event.event().getRevisions().add(revision);
            EventFolderException e = assertThrows(EventFolderException.class, event::save);
            assertTrue(e.what().contains("number is 2147483647; allowed are 0 to 1000000"), e.getMessage());
        }
        assertEquals(before, FolderContent.of(folder));
    }
}
