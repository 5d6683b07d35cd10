package org.straddle.ui.horizon;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.straddle.grid.GeoPosition;
import org.straddle.terrain.HorizonRequest;
import org.straddle.ui.fields.Numbers;
import org.straddle.ui.parts.QuestionDialog;
import org.straddle.words.Catalogue;

/** Which rasters, and from which height the horizon is looked at. */
final class ComputeHorizonDialog extends QuestionDialog {

    private static final Catalogue TEXTS = Catalogue.of(ComputeHorizonDialog.class);

    private final GeoPosition mark;
    private final List<Path> files = new ArrayList<>();
    private org.eclipse.swt.widgets.List shown;
    private Text antenna;
    private Text refraction;
    private Text farthest;
    private Button wgs84;
    private HorizonRequest request;

    ComputeHorizonDialog(Shell parent, GeoPosition mark) {
        super(parent, TEXTS.text("computeHorizonDialog.title"), TEXTS.text("computeHorizonDialog.explanation"), TEXTS.text("computeHorizonDialog.compute"), 3);
        this.mark = mark;
    }

    List<Path> files() {
        return List.copyOf(files);
    }

    HorizonRequest request() {
        return request;
    }

    @Override
    protected void fields(Composite body) {
        label(body, TEXTS.text("computeHorizonDialog.rasters"));
        shown = new org.eclipse.swt.widgets.List(body, SWT.BORDER | SWT.V_SCROLL | SWT.H_SCROLL);
        GridDataFactory.fillDefaults().grab(true, true).hint(380, 90).applyTo(shown);
        Button choose = new Button(body, SWT.PUSH);
        choose.setText(TEXTS.text("computeHorizonDialog.choose"));
        GridDataFactory.swtDefaults().align(SWT.FILL, SWT.TOP).applyTo(choose);
        choose.addListener(SWT.Selection, click -> choose());
        antenna = number(body,
                TEXTS.text("computeHorizonDialog.antenna"), Numbers.plain(HorizonRequest.USUAL_ANTENNA_M), TEXTS.text("computeHorizonDialog.antenna.unit"));
        farthest = number(body, TEXTS.text("computeHorizonDialog.farthest"), Numbers.plain(HorizonRequest.USUAL_FARTHEST_M / 1000), TEXTS.text("computeHorizonDialog.farthest.unit"));
        refraction = number(body, TEXTS.text("computeHorizonDialog.refraction"),
                "0.13", TEXTS.text("computeHorizonDialog.refraction.unit"));
        label(body, "");
        wgs84 = new Button(body, SWT.CHECK);
        wgs84.setText(TEXTS.text("computeHorizonDialog.geographic"));
        GridDataFactory.fillDefaults().span(2, 1).applyTo(wgs84);
        wgs84.addListener(SWT.Selection, click -> answered());
    }

    private void choose() {
        FileDialog dialog = new FileDialog(getShell(), SWT.OPEN | SWT.MULTI);
        dialog.setText(TEXTS.text("computeHorizonDialog.files"));
        dialog.setFilterNames(new String[] {TEXTS.text("computeHorizonDialog.files.kind"), TEXTS.text("horizonSources.all")});
        dialog.setFilterExtensions(new String[] {"*.tif;*.tiff;*.asc;*.TIF;*.ASC", "*"});
        if (dialog.open() != null) {
            files.clear();
            for (String name : dialog.getFileNames()) {
                files.add(Path.of(dialog.getFilterPath(), name));
            }
            shown.setItems(dialog.getFileNames());
            answered();
        }
    }

    private static void label(Composite body, String text) {
        Label label = new Label(body, SWT.NONE);
        label.setText(text);
        GridDataFactory.swtDefaults().align(SWT.BEGINNING, text.equals(TEXTS.text("computeHorizonDialog.rasters")) ? SWT.TOP : SWT.CENTER).applyTo(label);
    }

    private Text number(Composite body, String name, String value, String unit) {
        label(body, name);
        Composite beside = new Composite(body, SWT.NONE);
        beside.setLayout(GridLayoutFactory.fillDefaults().numColumns(2).create());
        GridDataFactory.fillDefaults().span(2, 1).applyTo(beside);
        Text text = new Text(beside, SWT.BORDER);
        text.setText(value);
        GridDataFactory.swtDefaults().hint(80, SWT.DEFAULT).applyTo(text);
        text.addListener(SWT.Modify, typed -> answered());
        label(beside, unit);
        return text;
    }

    @Override
    protected boolean complete() {
        try {
            request = new HorizonRequest(mark, Numbers.between(0, 500).parse(antenna.getText()),
                    Numbers.between(-0.5, 0.9).parse(refraction.getText()), 1000 * Numbers.between(0.1, 300).parse(farthest.getText()),
                    wgs84.getSelection());
            setErrorMessage(null);
        } catch (IllegalArgumentException refused) {
            setErrorMessage(refused.getMessage());
            return false;
        }
        if (files.isEmpty()) {
            setMessage(TEXTS.text("computeHorizonDialog.nofiles"),
                    IMessageProvider.NONE);
        }
        return !files.isEmpty();
    }
}
