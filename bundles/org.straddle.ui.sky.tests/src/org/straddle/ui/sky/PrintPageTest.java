package org.straddle.ui.sky;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.straddle.demo.DemoEvent;
import org.straddle.model.Event;
import org.straddle.outlook.Outlook;
import org.straddle.outlook.SitePass;
import org.straddle.ui.sky.pass.PassSheet;
import org.straddle.ui.sky.pass.SheetWords;

class PrintPageTest {

    @Test
    void namesCannotBreakThePageAndNothingIsFetched() {
        Event event = DemoEvent.create();
        event.getSites().forEach(site -> site.setName("<script>alert(\"x\")</script> & co"));
        Outlook outlook = Outlook.of(event, null);
        SitePass found = outlook.passes().get(0);
        String page = PassExport.page(new SheetWords(PassSheet.of(outlook, found).orElseThrow()),
                new byte[] {1, 2, 3}).toString();
        assertFalse(page.contains("<script"), page);
        assertTrue(page.contains("&lt;script&gt;alert(&quot;x&quot;)&lt;/script&gt; &amp; co"));
        assertFalse(page.contains("http"), "a page for the field must not need a network");
        assertTrue(page.contains("data:image/png;base64,AQID"));
    }
}
