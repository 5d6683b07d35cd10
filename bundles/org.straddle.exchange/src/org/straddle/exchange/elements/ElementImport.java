package org.straddle.exchange.elements;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntPredicate;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.common.command.UnexecutableCommand;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.straddle.exchange.SourceFile;
import org.straddle.model.Bird;
import org.straddle.model.BirdElements;
import org.straddle.model.BirdState;
import org.straddle.model.Event;
import org.straddle.model.Fresh;
import org.straddle.model.StraddlePackage;
import org.straddle.outlook.StoredElements;
import org.straddle.sky.ElementSet;
import org.straddle.store.EventFolder;
import org.straddle.store.EventFolderException;
import org.straddle.words.Catalogue;

/**
 * What happens to an event when files of element sets are imported: which sets go to which birds, which the event
 * has already, and which are of birds that it does not have. Nothing changes until the {@link #command} is executed,
 * and that is one step for undo.
 */
public final class ElementImport {

    private static final Catalogue TEXTS = Catalogue.of(ElementImport.class);

    /**
     * Epochs closer than this are the same: the two written forms round the same epoch to 0.864 ms (TLE, eight
     * decimals of a day) and to a microsecond.
     */
    private static final Duration SAME_EPOCH = Duration.ofMillis(1);

    /**
     * A set that will be stored.
     *
     * @param bird    of the event, or a new one with name, number and state "unknown"
     * @param newBird is the bird not in the event yet?
     */
    public record Addition(Bird bird, boolean newBird, ElementSet set, ElementFile file) {
    }

    /**
     * A set whose bird has one of the same epoch already; that one stays.
     *
     * @param same do both give the same orbit? If not, somebody corrected one of them
     */
    public record Known(Bird bird, ElementSet set, boolean same) {
    }

    private final Event event;
    private final List<Addition> additions = new ArrayList<>();
    private final Map<Bird, List<Addition>> byBird = new LinkedHashMap<>();
    private final List<Known> known = new ArrayList<>();
    private final List<ElementSet> unmatched = new ArrayList<>();

    private ElementImport(Event event) {
        this.event = event;
    }

    /**
     * Compares files with an event; call it on the thread that edits the event.
     *
     * @param addBird by catalogue number: shall a bird that the event does not have be added to it?
     */
    public static ElementImport into(Event event, List<ElementFile> files, IntPredicate addBird) {
        ElementImport result = new ElementImport(event);
        Map<Integer, Bird> birds = new HashMap<>();
        for (Bird bird : event.getBirds()) {
            if (bird.getCatalogueNumber() > 0) {
                birds.putIfAbsent(bird.getCatalogueNumber(), bird);
            }
        }
        for (ElementFile file : files) {
            for (ElementSet set : file.sets()) {
                result.place(set, file, birds, addBird);
            }
        }
        return result;
    }

    private void place(ElementSet set, ElementFile file, Map<Integer, Bird> birds, IntPredicate addBird) {
        int number = set.catalogueNumber();
        if (!birds.containsKey(number) && number > 0 && addBird.test(number)) {
            birds.put(number, newBird(set));
        }
        Bird bird = birds.get(number);
        if (bird == null) {
            unmatched.add(set);
            return;
        }
        for (BirdElements stored : bird.getElementSets()) {
            if (stored.getEpoch() != null && isSameEpoch(stored.getEpoch(), set)) {
                known.add(new Known(bird, set, isSameOrbit(stored, set)));
                return;
            }
        }
        for (Addition addition : byBird.getOrDefault(bird, List.of())) {
            if (isSameEpoch(addition.set().epoch(), set)) {
                known.add(new Known(bird, set, isSameOrbit(stored(addition, "", null), set)));
                return;
            }
        }
        Addition addition = new Addition(bird, bird.eContainer() == null, set, file);
        additions.add(addition);
        byBird.computeIfAbsent(bird, each -> new ArrayList<>()).add(addition);
    }

    private static Bird newBird(ElementSet set) {
        Bird bird = Fresh.bird();
        bird.setName(set.label());
        bird.setCatalogueNumber(set.catalogueNumber());
        bird.setState(BirdState.UNKNOWN);
        return bird;
    }

    private static boolean isSameEpoch(Instant epoch, ElementSet set) {
        return Duration.between(epoch, set.epoch()).abs().compareTo(SAME_EPOCH) <= 0;
    }

    private static boolean isSameOrbit(BirdElements stored, ElementSet set) {
        return stored.getMeanMotionRevPerDay() == set.meanMotionRevPerDay()
                && stored.getEccentricity() == set.eccentricity()
                && stored.getInclinationDeg() == set.inclinationDeg() && stored.getRaanDeg() == set.raanDeg()
                && stored.getArgumentOfPerigeeDeg() == set.argumentOfPerigeeDeg()
                && stored.getMeanAnomalyDeg() == set.meanAnomalyDeg() && stored.getBstar() == set.bstar();
    }

    /** Sets that will be stored, in the order of the files. */
    public List<Addition> additions() {
        return List.copyOf(additions);
    }

    /** Sets that the event, or an earlier line of the files, has already. */
    public List<Known> known() {
        return List.copyOf(known);
    }

    /** Sets of birds that the event does not have and that are not to be added: they are left out. */
    public List<ElementSet> unmatched() {
        return List.copyOf(unmatched);
    }

    /** Would the command change nothing? */
    public boolean isEmpty() {
        return additions.isEmpty();
    }

    /** What would change and what is left out, in plain sentences for the user. */
    public String summary() {
        StringBuilder told = new StringBuilder();
        if (isEmpty()) {
            told.append(TEXTS.text("elementImport.nothingImportElement"));
        } else {
            long fresh = byBird.values().stream().filter(each -> each.get(0).newBird()).count();
            told.append(count(additions.size(), TEXTS.text("elementImport.elementSet"))).append(TEXTS.text("elementImport.for")).append(count(byBird.size(), "bird"))
                    .append(fresh > 0 ? TEXTS.text("elementImport.new", "fresh", fresh) : ".");
        }
        if (!known.isEmpty()) {
            long conflicts = known.stream().filter(each -> !each.same()).count();
            told.append(' ').append(known.size()).append(known.size() == 1 ? TEXTS.text("elementImport.is")
                    : TEXTS.text("elementImport.are")).append(TEXTS.text("elementImport.alreadyKnown"))
                    .append(conflicts > 0 ? TEXTS.text("elementImport.themOrbitSame", "conflicts", conflicts) : ".");
        }
        if (!unmatched.isEmpty()) {
            told.append(' ').append(count(unmatched.size(), TEXTS.text("elementImport.elementSet")))
                    .append(unmatched.size() == 1 ? TEXTS.text("elementImport.belongsBirdEvent")
                            : TEXTS.text("elementImport.belongBirdsEvent"));
        }
        return told.toString();
    }

    private static String count(int number, String what) {
        return number + " " + what + (number == 1 ? "" : "s");
    }

    /**
     * The one step that makes the additions. The files go to the elements folder untouched, with the next save that
     * still finds the sets in the event.
     *
     * @param importedAt UTC
     * @return a command that cannot be executed when there is nothing to add
     */
    public Command command(EditingDomain domain, EventFolder folder, Instant importedAt) throws EventFolderException {
        if (isEmpty()) {
            return UnexecutableCommand.INSTANCE;
        }
        Map<ElementFile, String> names = new LinkedHashMap<>();
        for (Addition addition : additions) {
            if (!names.containsKey(addition.file())) {
                SourceFile source = addition.file().source();
                names.put(addition.file(), folder.addElementsFile(source.name(), source.bytes()));
            }
        }
        CompoundCommand command = new CompoundCommand(TEXTS.text("elementImport.importElementSets"));
        byBird.forEach((bird, added) -> {
            List<BirdElements> elements = added.stream().map(each -> stored(each, names.get(each.file()), importedAt))
                    .sorted(Comparator.comparing(BirdElements::getEpoch)).toList();
            if (bird.eContainer() == null) {
                bird.getElementSets().clear();
                bird.getElementSets().addAll(elements);
                command.append(AddCommand.create(domain, event, StraddlePackage.Literals.EVENT__BIRDS, bird));
            } else {
                addByEpoch(domain, command, bird, elements);
            }
        });
        return command;
    }

    /** From the latest to the earliest, so that no addition shifts the place of one after it. */
    private static void addByEpoch(EditingDomain domain, CompoundCommand command, Bird bird,
            List<BirdElements> ascending) {
        for (int i = ascending.size() - 1; i >= 0; i--) {
            BirdElements elements = ascending.get(i);
            int place = 0;
            for (BirdElements present : bird.getElementSets()) {
                place += present.getEpoch() == null || !present.getEpoch().isAfter(elements.getEpoch()) ? 1 : 0;
            }
            command.append(AddCommand.create(domain, bird, StraddlePackage.Literals.BIRD__ELEMENT_SETS, elements, place));
        }
    }

    private static BirdElements stored(Addition addition, String file, Instant importedAt) {
        return StoredElements.toBirdElements(addition.set(), file, addition.file().origin(), importedAt);
    }
}
