package org.straddle.ui.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.swt.graphics.Rectangle;
import org.straddle.atlas.mark.PlaceWords;
import org.straddle.atlas.picture.ScaleBar;
import org.straddle.atlas.scene.Attention;
import org.straddle.atlas.scene.SiteSpot;
import org.straddle.grid.Square;
import org.straddle.ui.parts.PictureAccess;
import org.straddle.words.Catalogue;

/** The sites on the map, for screen readers. */
record MapEntries(MapCanvas map) implements PictureAccess.Entries {

    private static final Catalogue TEXTS = Catalogue.of(MapEntries.class);

    /** Of the sign of a site, pixels. */
    private static final int SIGN = 18;

    @Override
    public String title() {
        return TEXTS.text("mapEntries.map");
    }

    /** What is being placed, or selected, or what there is at all. */
    @Override
    public String description() {
        if (map.placing().isPresent()) {
            return TEXTS.text("mapEntries.placing", "place", String.join(", ", PlaceWords.lines(map.placing().get().at())));
        }
        return map.selectedSite().map(site -> TEXTS.text("mapEntries.selected",
                "site", words(site))).orElseGet(() -> map.plane().map(plane ->
                TEXTS.text("mapEntries.sitesTabGoes", "sites", map.sites().size(),
                        "across", ScaleBar.words(map.sight(), plane))).orElse(TEXTS.text("mapEntries.empty")));
    }

    static String words(SiteSpot site) {
        List<String> parts = new ArrayList<>();
        parts.add(TEXTS.text("mapEntries.site", "site", site.name(), "kind", site.kind().word()));
        if (!site.squares().isEmpty()) {
            parts.add(site.squares().stream().map(Square::name).collect(Collectors.joining(" ")));
        }
        if (!site.teams().isEmpty()) {
            parts.add(TEXTS.text("mapEntries.teams", "count", site.teams().size(), "numbers", site.teams().stream()
                    .map(team -> String.valueOf(team.number())).collect(Collectors.joining(", "))));
        }
        if (site.attention() != Attention.NONE) {
            parts.add(TEXTS.text("mapEntries.found", "attention", site.attention().name()));
        }
        parts.add(PlaceWords.line(site.position()));
        return String.join("; ", parts);
    }

    @Override
    public int count() {
        return map.sites().size();
    }

    @Override
    public String words(int entry) {
        return words(map.sites().get(entry));
    }

    @Override
    public int selected() {
        return map.selectedSite().map(map.sites()::indexOf).orElse(-1);
    }

    @Override
    public Optional<Rectangle> place(int entry) {
        SiteSpot site = map.sites().get(entry);
        return Optional.of(new Rectangle((int) map.sight().pxX(site.at()) - SIGN / 2,
                (int) map.sight().pxY(site.at()) - SIGN / 2, SIGN, SIGN));
    }
}
