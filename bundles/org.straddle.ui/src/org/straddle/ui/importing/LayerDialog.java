package org.straddle.ui.importing;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.straddle.exchange.maps.LayerRole;
import org.straddle.exchange.maps.MapFile;
import org.straddle.grid.MapFeature;
import org.straddle.ui.parts.QuestionDialog;
import org.straddle.words.Catalogue;

/** Asks what a map that was read is to the event. */
final class LayerDialog extends QuestionDialog {

    private static final Catalogue TEXTS = Catalogue.of(LayerDialog.class);

    private final MapFile map;
    private Text title;
    private Combo role;
    private LayerRole chosen;
    private String named = "";

    LayerDialog(Shell parent, MapFile map) {
        super(parent, TEXTS.text("addLayer.title"), told(map), TEXTS.text("layerDialog.add"), 2);
        this.map = map;
    }

    private static String told(MapFile map) {
        long lines = map.features().stream().filter(feature -> feature.shape() == MapFeature.Shape.LINES).count();
        long areas = map.features().stream().filter(feature -> feature.shape() == MapFeature.Shape.AREA).count();
        long points = map.features().size() - lines - areas;
        return TEXTS.text("layerDialog.explanation", "file", map.name(), "lines", lines, "areas", areas,
                "points", points);
    }

    @Override
    protected void fields(Composite body) {
        title = line(body, TEXTS.text("layerDialog.title"), "", SWT.DEFAULT);
        title.setMessage(map.name());
        new Label(body, SWT.NONE).setText(TEXTS.text("layerDialog.role"));
        role = new Combo(body, SWT.DROP_DOWN);
        LayerRole.USUAL.forEach(each -> role.add(each.label()));
        boolean lines = map.features().stream().anyMatch(feature -> feature.shape() == MapFeature.Shape.LINES);
        role.select(LayerRole.USUAL.indexOf(lines ? LayerRole.ROADS : LayerRole.BY_THEMSELVES));
        role.setVisibleItemCount(LayerRole.USUAL.size());
        GridDataFactory.fillDefaults().grab(true, false).applyTo(role);
        Label help = new Label(body, SWT.WRAP);
        String words = TEXTS.text("layerDialog.help");
        help.setText(map.remarks().isEmpty() ? words : TEXTS.text("layerDialog.remarks", "help", words,
                "count", map.remarks().size(), "first", map.remarks().get(0)));
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).hint(460, SWT.DEFAULT).applyTo(help);
        title.addModifyListener(change -> named = title.getText());
        role.addModifyListener(change -> {
            chosen = parsed();
            setErrorMessage(chosen == null ? TEXTS.text("layerDialog.role.wrong", "text", role.getText()) : null);
            answered();
        });
        chosen = parsed();
    }

    private LayerRole parsed() {
        for (LayerRole each : LayerRole.USUAL) {
            if (each.label().equals(role.getText().strip())) {
                return each;
            }
        }
        try {
            return new LayerRole(role.getText());
        } catch (IllegalArgumentException e) {
            return null;
        }
    }

    @Override
    protected boolean complete() {
        return chosen != null;
    }

    LayerRole role() {
        return chosen;
    }

    String title() {
        return named;
    }
}
