package lampproof.template;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import freemarker.core.Environment;
import freemarker.core.TemplateNumberFormat;
import freemarker.core.TemplateNumberFormatFactory;
import freemarker.template.TemplateModelException;
import freemarker.template.TemplateNumberModel;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;

class TemplatesTest {

    private static final String NAME = "TemplatesTest-name.ftlh";

    @Test
    void aPageEscapesTexts() {
        assertThat(Templates.ofPages().fill(NAME, Map.of("name", "a < b")).strip())
                .isEqualTo("<p>a &lt; b</p>");
    }

    @Test
    void aMissingValueIsAFault() {
        assertThatThrownBy(() -> Templates.ofPages().fill(NAME, Map.of()))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining(NAME);
    }

    @Test
    void aMissingTemplateIsAFault() {
        assertThatThrownBy(() -> Templates.ofPages().fill("none.ftlh", Map.of()))
                .isInstanceOf(UncheckedIOException.class);
    }

    @Test
    void aTemplateMakesNoObject() {
        assertThatThrownBy(() -> Templates.ofPages().fill("TemplatesTest-new.ftlh", Map.of()))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("not allowed");
    }

    @Test
    void aDeckWritesNumbersInItsOwnFormat() {
        assertThat(Templates.ofDecks(new Exponents())
                        .fill("TemplatesTest-value.ftl", Map.of("value", 4.7e-6))
                        .strip())
                .isEqualTo("C1 a b 4.7e-06");
    }

    /** Writes one decimal and an exponent. */
    private static final class Exponents extends TemplateNumberFormatFactory {

        @Override
        public TemplateNumberFormat get(String parameters, Locale locale, Environment environment) {
            return new TemplateNumberFormat() {

                @Override
                public String formatToPlainText(TemplateNumberModel number) throws TemplateModelException {
                    return String.format(
                            Locale.ROOT, "%.1e", number.getAsNumber().doubleValue());
                }

                @Override
                public boolean isLocaleBound() {
                    return false;
                }

                @Override
                public String getDescription() {
                    return "exponents";
                }
            };
        }
    }
}
