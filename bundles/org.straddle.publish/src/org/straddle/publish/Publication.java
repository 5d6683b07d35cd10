package org.straddle.publish;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.straddle.check.Finding;
import org.straddle.kit.PackingList;
import org.straddle.kit.PackingSheet;
import org.straddle.model.Team;
import org.straddle.outlook.Outlook;
import org.straddle.words.Catalogue;

/**
 * All sheets of one state of the schedule: for every team a brief and a packing list, which name people and go to that
 * team alone, and one announcement for everybody. Each is an HTML page that needs no other file, and plain text.
 *
 * <p>It is a value: what it says stays as the event was when it was made.
 */
public final class Publication {

    private static final Catalogue TEXTS = Catalogue.of(Publication.class);

    private static final Pages PAGES = new Pages();

    private final List<Sheet> sheets;

    private Publication(List<Sheet> sheets) {
        this.sheets = List.copyOf(sheets);
    }

    /** @param findings what the checks said of the same outlook */
    public static Publication of(Outlook outlook, List<Finding> findings, PublicationSettings settings) {
        String revision = TEXTS.text("publication.revision", "revision", settings.revision(),
                "stamp", new Clock(outlook.zone()).stamp(settings.revisedAt()));
        List<Sheet> sheets = new ArrayList<>();
        Announcement announcement = Announcement.of(outlook, findings, settings.revision(), revision);
        sheets.add(new Sheet("announcement.html", PAGES.html(announcement)));
        sheets.add(new Sheet("announcement.txt", PAGES.text(announcement)));
        Set<String> taken = new HashSet<>();
        for (Team team : outlook.event().getTeams()) {
            String name = name(team, taken);
            Brief brief = Brief.of(outlook, team, findings, revision, "packing-" + name);
            sheets.add(new Sheet("brief-" + name + ".html", PAGES.html(brief)));
            sheets.add(new Sheet("brief-" + name + ".txt", PAGES.text(brief)));
            PackingList packing = PackingList.of(team);
            sheets.add(new Sheet("packing-" + name + ".html", PackingSheet.html(packing, outlook.zone())));
            sheets.add(new Sheet("packing-" + name + ".txt", PackingSheet.text(packing, outlook.zone())));
        }
        return new Publication(sheets);
    }

    /** {@code team-2}, or {@code team-2-2} when the number is taken. */
    private static String name(Team team, Set<String> taken) {
        String name = "team-" + team.getNumber();
        for (int again = 2; !taken.add(name); again++) {
            name = "team-" + team.getNumber() + "-" + again;
        }
        return name;
    }

    /** In the order announcement, then team by team. */
    public List<Sheet> sheets() {
        return sheets;
    }

    /**
     * Writes all sheets. Every file is written anew beside its place and then renamed, so a reader never sees half a
     * sheet, and nothing is replaced unless all could be written. Sheets of earlier revisions under other names stay.
     *
     * @param folder made when it does not exist
     * @return the files, in the order of {@link #sheets()}
     * @throws IOException naming the file that cannot be written
     */
    public List<Path> write(Path folder) throws IOException {
        return SheetFolder.write(folder, sheets);
    }
}
