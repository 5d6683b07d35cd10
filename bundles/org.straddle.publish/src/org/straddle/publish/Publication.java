package org.straddle.publish;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.straddle.check.Finding;
import org.straddle.kit.Packing;
import org.straddle.model.Team;
import org.straddle.outlook.Outlook;
import org.straddle.publish.packing.PackingPage;
import org.straddle.publish.packing.PackingSheet;
import org.straddle.words.Catalogue;

/**
 * All sheets of one state of the schedule: for every team a brief and a packing list, which name people and go to that
 * team alone, one announcement for everybody, and a list for the coordinator of where that comes
 * from. Each is an HTML page that needs no other file, and plain text.
 *
 * <p>It is a value: what it says stays as the event was when it was made.
 */
public final class Publication {

    private static final Catalogue TEXTS = Catalogue.of(Publication.class);

    private static final Pages PAGES = new Pages();

    private final List<Sheet> sheets;

    private final List<String> outline;

    private Publication(List<Sheet> sheets, List<String> outline) {
        this.sheets = List.copyOf(sheets);
        this.outline = outline;
    }

    /** @param findings what the checks said of the same outlook */
    public static Publication of(Outlook outlook, List<Finding> findings, PublicationSettings settings) {
        String revision = TEXTS.text("publication.revision", "revision", settings.revision(),
                "stamp", new Clock(outlook.zone()).stamp(settings.revisedAt()));
        List<Sheet> sheets = new ArrayList<>();
        Announcement announcement = Announcement.of(outlook, findings, settings.revision(), revision);
        sheets.add(new Sheet(Audience.PUBLIC, "announcement.html", PAGES.html(announcement)));
        sheets.add(new Sheet(Audience.PUBLIC, "announcement.txt", PAGES.text(announcement)));
        Set<String> taken = new HashSet<>();
        PlanHold hold = PlanHold.of(outlook);
        SourceList sources = SourceList.of(outlook, revision, hold);
        sheets.add(new Sheet(Audience.PRIVATE, "sources.html", PAGES.html(sources)));
        sheets.add(new Sheet(Audience.PRIVATE, "sources.txt", PAGES.text(sources)));
        for (Team team : outlook.event().getTeams()) {
            String name = name(team, taken);
            Brief brief = Brief.of(outlook, team, findings, revision, "packing-" + name, hold);
            sheets.add(new Sheet(Audience.PRIVATE, "brief-" + name + ".html", PAGES.html(brief)));
            sheets.add(new Sheet(Audience.PRIVATE, "brief-" + name + ".txt", PAGES.text(brief)));
            PackingPage packing = PackingPage.of(Packing.of(team, outlook), outlook);
            sheets.add(new Sheet(Audience.PRIVATE, "packing-" + name + ".html", PackingSheet.html(packing)));
            sheets.add(new Sheet(Audience.PRIVATE, "packing-" + name + ".txt", PackingSheet.text(packing)));
            sheets.add(new Sheet(Audience.PRIVATE, "packing-" + name + "-phone.html", PackingSheet.phone(packing)));
        }
        return new Publication(sheets, PublicOutline.of(announcement, sheets));
    }

    /** {@code team-2}, or {@code team-2-2} when the number is taken. */
    private static String name(Team team, Set<String> taken) {
        String name = "team-" + team.getNumber();
        for (int again = 2; !taken.add(name); again++) {
            name = "team-" + team.getNumber() + "-" + again;
        }
        return name;
    }

    /** In the order announcement, where it comes from, then team by team. */
    public List<Sheet> sheets() {
        return sheets;
    }

    /** What everybody will see, in lines for the publisher to read before anything is written. */
    public List<String> outline() {
        return outline;
    }

    /**
     * Writes all sheets, whole, beside their places. Nothing is replaced before {@link PreparedSheets#putInPlace}, and
     * that is for after the revision was written down in the event. Sheets of earlier revisions under other names stay.
     *
     * @param folder made when it does not exist; gets a folder for each {@link Audience}
     */
    public PreparedSheets prepare(Path folder) throws PublishException {
        return PreparedSheets.write(folder, sheets);
    }
}
