package org.straddle.ui.findings;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.jface.viewers.Viewer;
import org.eclipse.jface.viewers.ViewerComparator;
import org.eclipse.jface.window.ToolTip;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.Text;
import org.straddle.check.Finding;
import org.straddle.model.naming.Naming;
import org.straddle.ui.parts.HeaderRoom;
import org.straddle.ui.parts.OnceSized;
import org.straddle.ui.parts.TableFrame;
import org.straddle.ui.things.Icons;
import org.straddle.words.Catalogue;

/** Findings line by line, a box to search them and their counts above, the chosen one in full beside. */
final class FindingsTable {

    private static final Catalogue TEXTS = Catalogue.of(FindingsTable.class);

    /** What is broken at its end in a tip. */
    private static final String LONG_LINE = "(.{70,110}) ";

    private final Label tally;
    private final TableViewer viewer;
    private final Tips tips;
    private String told = "";

    FindingsTable(Composite parent, FindingFilter filter, FindingDetail.Deeds deeds) {
        Composite body = new Composite(parent, SWT.NONE);
        body.setLayout(GridLayoutFactory.fillDefaults().numColumns(2).extendedMargins(0, 8, 3, 0).spacing(10, 3)
                .create());
        Text words = new Text(body, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
        words.setMessage(TEXTS.text("findingsTable.search"));
        GridDataFactory.fillDefaults().grab(true, false).applyTo(words);
        tally = new Label(body, SWT.NONE);
        SashForm halves = new SashForm(body, SWT.HORIZONTAL);
        GridDataFactory.fillDefaults().grab(true, true).span(2, 1).applyTo(halves);
        Composite frame = new TableFrame(halves);
        viewer = new TableViewer(frame, SWT.FULL_SELECTION | SWT.MULTI | SWT.V_SCROLL);
        viewer.getTable().setHeaderVisible(true);
        OnceSized.show(viewer.getTable());
        viewer.setContentProvider(ArrayContentProvider.getInstance());
        viewer.addFilter(filter);
        tips = new Tips(viewer);
        TableColumnLayout columns = new TableColumnLayout();
        frame.setLayout(columns);
        column(viewer, columns, TEXTS.text("findingsTable.severity"), 8, 100, FindingsTable::severityWord);
        column(viewer, columns, TEXTS.text("findingsTable.finding"), 58, 300, Finding::sentence);
        column(viewer, columns, TEXTS.text("findingsTable.where"), 20, 120, FindingsTable::where);
        column(viewer, columns, TEXTS.text("findingsTable.rule"), 14, 100, Finding::rule);
        FindingDetail detail = new FindingDetail(halves, deeds);
        halves.setWeights(72, 28);
        viewer.addSelectionChangedListener(choice -> detail.show(chosen()));
        words.addModifyListener(change -> {
            filter.words(words.getText());
            refilter();
        });
    }

    TableViewer viewer() {
        return viewer;
    }

    List<Finding> chosen() {
        return Stream.of(viewer.getStructuredSelection().toArray()).map(Finding.class::cast).toList();
    }

    /**
     * The same findings stay chosen when they are found again. If all are gone while the user works in the table, the
     * one in the place of the first is chosen, so that the keys lead on from there.
     */
    void show(List<Finding> findings) {
        tips.hide();
        Set<String> keys = chosen().stream().map(Finding::key).collect(Collectors.toSet());
        int place = viewer.getTable().getSelectionIndex();
        viewer.setInput(findings.toArray());
        List<Finding> same = findings.stream().filter(finding -> keys.contains(finding.key())).toList();
        viewer.setSelection(new StructuredSelection(same));
        int rows = viewer.getTable().getItemCount();
        if (chosen().isEmpty() && place >= 0 && rows > 0 && viewer.getTable().isFocusControl()) {
            viewer.setSelection(new StructuredSelection(viewer.getElementAt(Math.min(place, rows - 1))), true);
        }
    }

    /** Goes away when the rows change under it. */
    private static final class Tips extends ColumnViewerToolTipSupport {

        Tips(TableViewer viewer) {
            super(viewer, ToolTip.NO_RECREATE, false);
        }
    }

    /** To be called when the filter lets through others. */
    void refilter() {
        viewer.refresh();
        tell(told);
    }

    /** Tells how many there are, and how many of them the filter lets through when it holds some back. */
    void tell(String words) {
        told = words;
        int all = viewer.getInput() instanceof Object[] findings ? findings.length : 0;
        int shown = viewer.getTable().getItemCount();
        tally.setText(shown == all ? words : TEXTS.text("findingsTable.tally", "tally", words, "shown", shown));
        tally.requestLayout();
    }

    private static void column(TableViewer viewer, TableColumnLayout columns, String title, int weight, int least,
            Function<Finding, String> text) {
        TableViewerColumn column = new TableViewerColumn(viewer, SWT.NONE);
        column.getColumn().setText(title);
        columns.setColumnData(column.getColumn(), new ColumnWeightData(weight, HeaderRoom.least(viewer.getTable(), title, least)));
        boolean first = viewer.getTable().getColumnCount() == 1;
        Comparator<Finding> order = first ? Comparator.comparing(Finding::severity) : Comparator.comparing(text, String.CASE_INSENSITIVE_ORDER);
        column.getColumn().addListener(SWT.Selection, click -> sort(viewer, column.getColumn(), order));
        column.setLabelProvider(new ColumnLabelProvider() {
            @Override
            public String getText(Object row) {
                return text.apply((Finding) row);
            }

            @Override
            public Image getImage(Object row) {
                Finding finding = (Finding) row;
                return !first ? null : finding.accepted().isPresent() ? Icons.image("accepted")
                        : Icons.of(finding.severity());
            }

            @Override
            public Color getForeground(Object row) {
                return ((Finding) row).accepted().isPresent()
                        ? viewer.getTable().getDisplay().getSystemColor(SWT.COLOR_DARK_GRAY) : null;
            }

            @Override
            public String getToolTipText(Object row) {
                return tip((Finding) row);
            }
        });
    }

    /** A click on a head sorts by it, a second one the other way; what is equal stays in the order of the checks. */
    private static void sort(TableViewer viewer, TableColumn by, Comparator<Finding> order) {
        Table table = viewer.getTable();
        boolean again = table.getSortColumn() == by && table.getSortDirection() == SWT.UP;
        table.setSortColumn(by);
        table.setSortDirection(again ? SWT.DOWN : SWT.UP);
        viewer.setComparator(new ViewerComparator() {
            @Override
            public int compare(Viewer any, Object a, Object b) {
                return (again ? order.reversed() : order).compare((Finding) a, (Finding) b);
            }
        });
    }

    private static String severityWord(Finding finding) {
        return finding.accepted().isPresent() ? TEXTS.text("findingsTable.accepted") : finding.severity().label();
    }

    private static String where(Finding finding) {
        return String.join(", ", finding.objects().stream().map(Naming::name).toList());
    }

    private static String tip(Finding finding) {
        String fixed = finding.fix().map(fix -> TEXTS.text("findingsTable.tip.fix", "sentence", finding.sentence(),
                "fix", fix.label())).orElse(finding.sentence());
        return finding.accepted().map(acceptance -> TEXTS.text("findingsTable.tip.accepted", "tip", fixed,
                "by", acceptance.getBy(), "reason", acceptance.getReason())).orElse(fixed).replaceAll(LONG_LINE, "$1\n").strip();
    }
}
