package lampproof.report;

import java.io.StringWriter;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import lampproof.compare.DeckVerdict;
import lampproof.compare.Outcome;
import lampproof.compare.RunVerdict;
import lampproof.compare.Verdict;
import lampproof.prediction.Prediction;
import lampproof.unit.PlainNumber;

/**
 * The verdicts of a run for a build server, in the JUnit form that all of them read: a figure is a test case, a difference
 * a failure, no verdict an error, and what was not simulated is skipped.
 */
public final class JunitReport {

    private final XMLStreamWriter xml;

    private JunitReport(XMLStreamWriter xml) {
        this.xml = xml;
    }

    /** The report. */
    public static String text(RunVerdict run) {
        StringWriter text = new StringWriter();
        try {
            new JunitReport(XMLOutputFactory.newInstance().createXMLStreamWriter(text)).write(run);
        } catch (XMLStreamException e) {
            throw new IllegalStateException("a report cannot be written into memory", e);
        }
        return text + "\n";
    }

    private void write(RunVerdict run) throws XMLStreamException {
        xml.writeStartDocument("UTF-8", "1.0");
        xml.writeCharacters("\n");
        xml.writeStartElement("testsuite");
        attribute("name", run.name());
        attribute("tests", String.valueOf(run.verdicts().size()));
        attribute("failures", String.valueOf(run.count(Outcome.DIFFERS)));
        attribute("errors", String.valueOf(run.count(Outcome.NO_VERDICT)));
        attribute("skipped", String.valueOf(run.count(Outcome.PREDICTED_ONLY)));
        for (DeckVerdict deck : run.decks()) {
            for (Verdict verdict : deck.verdicts()) {
                write(verdict, run.name() + "." + deck.deck().word(), deck.window());
            }
        }
        for (Verdict verdict : run.others()) {
            write(verdict, run.name(), "");
        }
        xml.writeCharacters("\n");
        xml.writeEndElement();
        xml.writeEndDocument();
    }

    private void write(Verdict verdict, String group, String window) throws XMLStreamException {
        xml.writeCharacters("\n  ");
        xml.writeStartElement("testcase");
        attribute("classname", group);
        attribute("name", verdict.prediction().figure().name());
        switch (verdict.outcome()) {
            case AGREES -> {}
            case DIFFERS -> element("failure", difference(verdict, window));
            case NO_VERDICT -> element("error", verdict.reason());
            case PREDICTED_ONLY -> element("skipped", verdict.reason());
        }
        xml.writeEndElement();
    }

    private void element(String name, String message) throws XMLStreamException {
        xml.writeStartElement(name);
        attribute("message", message);
        xml.writeEndElement();
    }

    private void attribute(String name, String value) throws XMLStreamException {
        xml.writeAttribute(name, printable(value));
    }

    private static String difference(Verdict verdict, String window) {
        Prediction prediction = verdict.prediction();
        String unit = prediction.figure().unit();
        String text = "expected %s %s, got %s %s, band +- %s %s, window %s"
                .formatted(
                        PlainNumber.significant(prediction.value(), 6),
                        unit,
                        PlainNumber.significant(verdict.simulated().orElse(Double.NaN), 6),
                        unit,
                        PlainNumber.significant(verdict.allowed(), 3),
                        unit,
                        window);
        return verdict.reason().isEmpty() ? text : text + "; " + verdict.reason();
    }

    /** XML 1.0 cannot hold control characters, not even escaped, nor half a surrogate pair. */
    private static String printable(String text) {
        return text.replaceAll("[\\p{Cntrl}\\p{Cs}\\ufffe\\uffff]", "");
    }
}
