package org.straddle.ui.workbench;

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

/** Asks what a map that was read is to the event. */
final class LayerDialog extends QuestionDialog {

    private final MapFile map;
    private Text title;
    private Combo role;
    private LayerRole chosen;
    private String named = "";

    LayerDialog(Shell parent, MapFile map) {
        super(parent, "Add a map layer", told(map), "&Add the layer", 2);
        this.map = map;
    }

    private static String told(MapFile map) {
        long lines = map.features().stream().filter(feature -> feature.shape() == MapFeature.Shape.LINES).count();
        long areas = map.features().stream().filter(feature -> feature.shape() == MapFeature.Shape.AREA).count();
        long points = map.features().size() - lines - areas;
        return map.name() + " holds " + lines + (lines == 1 ? " line, " : " lines, ") + areas + (areas == 1 ? " area and " : " areas and ")
                + points + (points == 1 ? " group of points." : " groups of points.");
    }

    @Override
    protected void fields(Composite body) {
        new Label(body, SWT.NONE).setText("&Title:");
        title = new Text(body, SWT.BORDER);
        title.setMessage(map.name());
        GridDataFactory.fillDefaults().grab(true, false).applyTo(title);
        new Label(body, SWT.NONE).setText("All of it is:");
        role = new Combo(body, SWT.DROP_DOWN);
        LayerRole.USUAL.forEach(each -> role.add(each.label()));
        boolean lines = map.features().stream().anyMatch(feature -> feature.shape() == MapFeature.Shape.LINES);
        role.select(LayerRole.USUAL.indexOf(lines ? LayerRole.ROADS : LayerRole.BY_THEMSELVES));
        role.setVisibleItemCount(LayerRole.USUAL.size());
        GridDataFactory.fillDefaults().grab(true, false).applyTo(role);
        Label help = new Label(body, SWT.WRAP);
        StringBuilder words = new StringBuilder("Roads to scout are searched for places where they cross lines between squares or pass corners."
                + " Of everything else the distance to such places is told and counts for their rank. A word of your own will do, too.");
        if (!map.remarks().isEmpty()) {
            words.append("\n\n").append(map.remarks().size()).append(" remarks; the first: ").append(map.remarks().get(0));
        }
        help.setText(words.toString());
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).hint(460, SWT.DEFAULT).applyTo(help);
        title.addModifyListener(change -> named = title.getText());
        role.addModifyListener(change -> {
            chosen = parsed();
            setErrorMessage(chosen == null ? "\"" + role.getText() + "\" is no role. Choose one, or write a word or two." : null);
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
