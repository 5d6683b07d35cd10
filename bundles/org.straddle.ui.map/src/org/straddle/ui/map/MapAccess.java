package org.straddle.ui.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.Accessible;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.Point;
import org.straddle.atlas.mark.PlaceWords;
import org.straddle.atlas.picture.ScaleBar;
import org.straddle.atlas.scene.Attention;
import org.straddle.atlas.scene.SiteSpot;
import org.straddle.grid.Square;

/** Tells screen readers of the map: a list whose entries are the sites. */
final class MapAccess {

    private final MapCanvas map;
    private final Accessible accessible;

    MapAccess(MapCanvas map) {
        this.map = map;
        this.accessible = map.control().getAccessible();
        accessible.addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = event.childID == ACC.CHILDID_SELF ? "Map" : words(event.childID);
            }

            @Override
            public void getDescription(AccessibleEvent event) {
                event.result = event.childID == ACC.CHILDID_SELF ? description() : words(event.childID);
            }
        });
        accessible.addAccessibleControlListener(new AccessibleControlAdapter() {
            @Override
            public void getRole(AccessibleControlEvent event) {
                event.detail = event.childID == ACC.CHILDID_SELF ? ACC.ROLE_LIST : ACC.ROLE_LISTITEM;
            }

            @Override
            public void getChildCount(AccessibleControlEvent event) {
                event.detail = map.sites().size();
            }

            @Override
            public void getChildren(AccessibleControlEvent event) {
                event.children = IntStream.range(0, map.sites().size()).boxed().toArray();
            }

            @Override
            public void getFocus(AccessibleControlEvent event) {
                event.childID = map.control().isFocusControl() ? selectedChild() : ACC.CHILDID_NONE;
            }

            @Override
            public void getSelection(AccessibleControlEvent event) {
                event.childID = map.selectedSite().isPresent() ? selectedChild() : ACC.CHILDID_NONE;
            }

            @Override
            public void getState(AccessibleControlEvent event) {
                event.detail = ACC.STATE_FOCUSABLE | ACC.STATE_SELECTABLE;
                if (event.childID >= 0 && event.childID == selectedChild()) {
                    event.detail |= ACC.STATE_SELECTED | ACC.STATE_FOCUSED;
                }
            }

            @Override
            public void getLocation(AccessibleControlEvent event) {
                if (event.childID >= 0 && event.childID < map.sites().size()) {
                    SiteSpot site = map.sites().get(event.childID);
                    Point corner = map.control().toDisplay((int) map.sight().pxX(site.at()) - 9,
                            (int) map.sight().pxY(site.at()) - 9);
                    event.x = corner.x;
                    event.y = corner.y;
                    event.width = 18;
                    event.height = 18;
                }
            }
        });
    }

    void selected() {
        accessible.selectionChanged();
        accessible.setFocus(selectedChild());
    }

    /** What is being placed, or selected, or what there is at all. */
    String description() {
        if (map.placing().isPresent()) {
            return "Placing at " + String.join(", ", PlaceWords.lines(map.placing().get().at()));
        }
        return map.selectedSite().map(site -> "Selected: " + words(site)).orElseGet(() -> map.plane().map(plane ->
                map.sites().size() + " sites, " + ScaleBar.words(map.sight(), plane)
                + ". Tab goes from site to site, Enter opens one.").orElse("Empty"));
    }

    static String words(SiteSpot site) {
        List<String> parts = new ArrayList<>();
        parts.add(site.name() + ", " + site.kind().word() + " site");
        if (!site.squares().isEmpty()) {
            parts.add(site.squares().stream().map(Square::name).collect(Collectors.joining(" ")));
        }
        if (!site.teams().isEmpty()) {
            parts.add((site.teams().size() == 1 ? "team " : "teams ") + site.teams().stream()
                    .map(team -> String.valueOf(team.number())).collect(Collectors.joining(", ")));
        }
        if (site.attention() != Attention.NONE) {
            parts.add(site.attention().name().toLowerCase(Locale.ROOT) + " found");
        }
        parts.add(PlaceWords.line(site.position()));
        return String.join("; ", parts);
    }

    private String words(int child) {
        return child < 0 || child >= map.sites().size() ? "" : words(map.sites().get(child));
    }

    private int selectedChild() {
        int index = map.selectedSite().map(map.sites()::indexOf).orElse(-1);
        return index < 0 ? ACC.CHILDID_SELF : index;
    }
}
