package org.straddle.atlas.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.straddle.atlas.layer.BaseMap;
import org.straddle.atlas.picture.MapContents;
import org.straddle.atlas.picture.Shown;
import org.straddle.atlas.picture.Sight;
import org.straddle.atlas.scene.DemoScene;

class MapPageTest {

    @Test
    void onePageWithEverythingAReaderNeeds() throws Exception {
        MapContents demo = DemoScene.contents();
        Sight sight = new Sight(0, 0, 1, 1000, 500).fitting(demo.scene().box(), 1);
        byte[] pdf = MapPage.pdf(demo, sight, Shown.EVERYTHING,
                new MapPage.Text("Map: Žižka’s rove", "18 to 20 June 2027", List.of(BaseMap.ORIGIN)), null);
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertEquals(1, document.getNumberOfPages());
            assertTrue(document.getPage(0).getMediaBox().getWidth() > document.getPage(0).getMediaBox().getHeight());
            String text = new PDFTextStripper().getText(document);
            for (String words : List.of("Žižka’s rove", "18 to 20 June 2027", "Four Winds Corner", "HP94", "50 km", "N",
                    "corner site", "Natural Earth", "Oblique stereographic (EPSG method 9809)", "Höfn",
                    "drives of team 3")) {
                assertTrue(text.contains(words), words + " in " + text);
            }
        }
        assertTrue(pdf.length > 20_000, "a map, not only words: " + pdf.length);
    }
}
