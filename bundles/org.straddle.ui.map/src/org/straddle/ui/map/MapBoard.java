package org.straddle.ui.map;

import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.straddle.atlas.mark.PlaceWords;
import org.straddle.grid.GeoPosition;
import org.straddle.words.Catalogue;

/** The map with its list of layers beside it, and a line below that says where one is and what the keys do. */
final class MapBoard {

    private static final Catalogue TEXTS = Catalogue.of(MapBoard.class);

    /** Below this width the list is not shown until it is asked for. */
    private static final int NARROW_PX = 760;
    private static final int LIST_PX = 215;
    private static final String KEYS = TEXTS.text("mapBoard.tabSitesEnter");
    private static final String PLACING_KEYS =
            TEXTS.text("mapBoard.keys");

    private final Composite body;
    private final SashForm halves;
    private final MapCanvas map;
    private final LayerList layers;
    private final Label place;
    private final Label keys;
    private Boolean listWished;

    MapBoard(Composite parent) {
        body = new Composite(parent, SWT.NONE);
        body.setLayout(GridLayoutFactory.fillDefaults().numColumns(2).spacing(12, 2).create());
        halves = new SashForm(body, SWT.HORIZONTAL | SWT.SMOOTH);
        halves.setLayoutData(GridDataFactory.fillDefaults().grab(true, true).span(2, 1).create());
        map = new MapCanvas(halves);
        layers = new LayerList(halves, map.letters(), map::show);
        place = new Label(body, SWT.NONE);
        place.setLayoutData(GridDataFactory.fillDefaults().indent(6, 0).hint(330, SWT.DEFAULT).create());
        keys = new Label(body, SWT.NONE);
        keys.setLayoutData(GridDataFactory.fillDefaults().grab(true, false).create());
        halves.addListener(SWT.Resize, event -> arrange());
        map.addListener(this::tell);
        tell();
    }

    MapCanvas map() {
        return map;
    }

    LayerList layers() {
        return layers;
    }

    Composite control() {
        return body;
    }

    boolean listsLayers() {
        return listWished == null ? halves.getClientArea().width >= NARROW_PX : listWished;
    }

    void listLayers(boolean wished) {
        listWished = wished;
        arrange();
        if (wished) {
            layers.setFocus();
        } else {
            map.control().setFocus();
        }
    }

    /** The place under the pointer; empty when it is elsewhere. */
    void pointed(Optional<GeoPosition> at) {
        if (map.placing().isEmpty()) {
            place.setText(at.map(PlaceWords::line).orElse(""));
        }
    }

    private void tell() {
        map.placing().ifPresent(placing -> place.setText(PlaceWords.line(placing.at())));
        String wanted = map.placing().isPresent() ? PLACING_KEYS : KEYS;
        if (!wanted.equals(keys.getText())) {
            keys.setText(wanted);
            keys.setToolTipText(wanted);
        }
    }

    private void arrange() {
        int width = halves.getClientArea().width;
        if (width < 2) {
            return;
        }
        if (listsLayers()) {
            halves.setMaximizedControl(null);
            int list = Math.min(LIST_PX, width / 2);
            halves.setWeights(width - list, list);
        } else {
            halves.setMaximizedControl(map.control());
        }
    }
}
