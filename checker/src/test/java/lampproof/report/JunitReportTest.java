package lampproof.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import javax.xml.parsers.DocumentBuilderFactory;
import lampproof.compare.RunVerdict;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class JunitReportTest {

    @Test
    void theCountsAreThoseOfTheFigures() throws Exception {
        Element suite = parsed(JunitReport.text(Verdicts.five()));
        assertThat(suite.getAttribute("tests")).isEqualTo("5");
        assertThat(suite.getAttribute("failures")).isEqualTo("1");
        assertThat(suite.getAttribute("skipped")).isEqualTo("1");
        assertThat(suite.getAttribute("errors")).isEqualTo("0");
        assertThat(suite.getElementsByTagName("testcase").getLength()).isEqualTo(5);
    }

    @Test
    void aFailureHoldsWhatWasExpectedWhatCameTheBandTheWindowAndTheUnit() throws Exception {
        assertThat(message("failure", Verdicts.five()))
                .isEqualTo("expected 0.0925000 A, got 0.180000 A, band +- 0.00185 A, "
                        + "window 0 s to 20 ms, 1 line period");
    }

    @Test
    void noVerdictIsAnErrorAndNotSimulatedASkipEachWithItsReason() throws Exception {
        assertThat(message("error", Verdicts.failed())).isEqualTo("=cmd|the simulator was stopped");
        assertThat(message("skipped", Verdicts.five())).isEqualTo("no deck settles it");
    }

    @Test
    void namesWithMarksStayWellFormedAndControlCharactersAreDropped() throws Exception {
        Element suite = parsed(JunitReport.text(Verdicts.five()));
        assertThat(suite.getAttribute("name")).isEqualTo("R<1 & 2 \u03a9> ");
    }

    private static String message(String element, RunVerdict run) throws Exception {
        NodeList found = parsed(JunitReport.text(run)).getElementsByTagName(element);
        assertThat(found.getLength()).isEqualTo(1);
        return ((Element) found.item(0)).getAttribute("message");
    }

    private static Element parsed(String xml) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(xml)))
                .getDocumentElement();
    }
}
