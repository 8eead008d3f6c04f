package lampproof.deck;

import freemarker.core.Environment;
import freemarker.core.TemplateNumberFormat;
import freemarker.core.TemplateNumberFormatFactory;
import freemarker.core.UnformattableValueException;
import freemarker.template.TemplateModelException;
import freemarker.template.TemplateNumberModel;
import java.util.Locale;

/** Makes every number of a template a {@link NetlistNumber}, whatever the language of the machine. */
final class NetlistNumberFormat extends TemplateNumberFormat {

    /** Makes the one format. */
    static final TemplateNumberFormatFactory FACTORY = new TemplateNumberFormatFactory() {
        @Override
        public TemplateNumberFormat get(String parameters, Locale locale, Environment environment) {
            return new NetlistNumberFormat();
        }
    };

    @Override
    public String formatToPlainText(TemplateNumberModel number)
            throws UnformattableValueException, TemplateModelException {
        try {
            return NetlistNumber.text(number.getAsNumber().doubleValue());
        } catch (IllegalArgumentException e) {
            throw new UnformattableValueException(e.getMessage(), e);
        }
    }

    @Override
    public boolean isLocaleBound() {
        return false;
    }

    @Override
    public String getDescription() {
        return "plain netlist number";
    }
}
