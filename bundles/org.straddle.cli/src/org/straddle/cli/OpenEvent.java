package org.straddle.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EClass;
import org.straddle.model.Bird;
import org.straddle.model.Event;
import org.straddle.model.InertText;
import org.straddle.model.Site;
import org.straddle.model.StraddlePackage;
import org.straddle.model.Team;
import org.straddle.model.naming.Naming;
import org.straddle.outlook.EarthSearch;
import org.straddle.outlook.Outlook;
import org.straddle.sky.prediction.PassSearch;
import org.straddle.store.EventFolder;
import org.straddle.store.EventFolderException;
import org.straddle.store.Migration;
import org.straddle.words.Catalogue;

import picocli.CommandLine.Parameters;

/**
 * The event that a command works on: its folder, opened when first asked for. Commands that change nothing open it
 * for reading only, so they may run while the workbench has it open.
 */
final class OpenEvent implements AutoCloseable {

    private static final Catalogue TEXTS = Catalogue.of(OpenEvent.class);

    @Parameters(index = "0", paramLabel = "EVENT")
    private Path path;

    private EventFolder folder;

    /** The event for a command that will save it. */
    EventFolder toChange() throws EventFolderException {
        if (folder == null) {
            Ahead.awaitReading();
            folder = EventFolder.open(path);
        }
        return folder;
    }

    /** The same, except that a dry run needs no lock: it may look at an event that it may not write, or that is being edited. */
    EventFolder toChange(boolean dryRun) throws EventFolderException {
        if (!dryRun) {
            return toChange();
        }
        event();
        return folder;
    }

    /** The event to read. */
    Event event() throws EventFolderException {
        if (folder == null) {
            Ahead.awaitReading();
            folder = EventFolder.openReadOnly(path);
        }
        return folder.event();
    }

    /** What became of an event that an older Straddle wrote, once it is open. */
    Optional<Migration> migration() {
        return folder == null ? Optional.empty() : folder.migration();
    }

    /** Its folder, once {@link #event()} or {@link #toChange()} was called. */
    EventFolder folder() {
        return folder;
    }

    @Override
    public void close() {
        if (folder != null) {
            folder.close();
        }
    }

    Outlook outlook(PrintWriter err) throws EventFolderException {
        return outlook(event(), err);
    }

    /** The same of a copy of the event. */
    Outlook outlook(Event read, PrintWriter err) throws EventFolderException {
        return Outlook.of(read, search(), new ConsoleProgress(err));
    }

    /** The event's outlook for a command that goes through its passes once. */
    Outlook outlookToWalk(PrintWriter err) throws EventFolderException {
        Event read = event();
        return Outlook.toWalk(read, search(), new ConsoleProgress(err));
    }

    private PassSearch search() throws EventFolderException {
        try {
            return EarthSearch.in(folder.elements());
        } catch (EventFolderException failure) {
            throw failure;
        } catch (IOException failure) {
            throw new WrongInput(failure.getMessage());
        }
    }

    /**
     * The team that a user named, by its number or as {@link #named} does.
     *
     * @throws WrongInput when none or several match
     */
    static Team team(String wanted, Event event) {
        return numbered(wanted, event)
                .orElseGet(() -> named(wanted, event.getTeams(), Team::getName, StraddlePackage.Literals.TEAM));
    }

    /** The team that bears what a user named as its number. */
    static Optional<Team> numbered(String wanted, Event event) {
        return event.getTeams().stream().filter(each -> wanted.equals(String.valueOf(each.getNumber()))).findFirst();
    }

    /** The site that a user named, as {@link #named} does. */
    static Site site(String wanted, Event event) {
        return named(wanted, event.getSites(), Site::getName, StraddlePackage.Literals.SITE);
    }

    /** The bird that a user named, as {@link #named} does. */
    static Bird bird(String wanted, Event event) {
        return named(wanted, event.getBirds(), Bird::getName, StraddlePackage.Literals.BIRD);
    }

    /**
     * The one object that a user named, by its whole name or a part of it that only one has.
     *
     * @throws WrongInput when none or several match
     */
    static <T> T named(String wanted, List<? extends T> all, Function<? super T, String> name, EClass kind) {
        return named(wanted, all, name, Naming.inCurrent().type(kind));
    }

    /** The same, of things that the model has no single word for. */
    static <T> T named(String wanted, List<? extends T> all, Function<? super T, String> name, String kind) {
        for (T candidate : all) {
            if (wanted.equalsIgnoreCase(name.apply(candidate))) {
                return candidate;
            }
        }
        String part = wanted.toLowerCase(Locale.ROOT);
        List<T> matching = all.stream().<T>map(candidate -> candidate)
                .filter(candidate -> String.valueOf(name.apply(candidate)).toLowerCase(Locale.ROOT).contains(part))
                .toList();
        if (matching.size() == 1) {
            return matching.get(0);
        }
        String names = (matching.isEmpty() ? all : matching).stream().<String>map(name)
                .map(each -> InertText.line(String.valueOf(each))).collect(Collectors.joining(", "));
        throw new WrongInput(!matching.isEmpty() ? TEXTS.text("openEvent.severalThingsMatch", "wanted", wanted,
                "names", names)
                : TEXTS.text("openEvent.called", "kind", kind, "wanted", wanted, "names", names.isEmpty()
                        ? TEXTS.text("openEvent.thereNone") : TEXTS.text("openEvent.there", "names", names)));
    }
}
