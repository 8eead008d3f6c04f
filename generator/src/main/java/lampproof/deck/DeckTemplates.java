package lampproof.deck;

import freemarker.cache.ClassTemplateLoader;
import freemarker.core.TemplateClassResolver;
import freemarker.template.Configuration;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import freemarker.template.Version;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.Map;
import lampproof.template.RecordWrapper;

/** The deck templates that ship with lampproof. */
final class DeckTemplates {

    private static final Version VERSION = Configuration.VERSION_2_3_34;
    private static final String NUMBERS = "netlist";

    private final Configuration configuration = new Configuration(VERSION);

    DeckTemplates() {
        configuration.setTemplateLoader(new ClassTemplateLoader(DeckTemplates.class, "/lampproof/decks"));
        configuration.setObjectWrapper(new RecordWrapper());
        configuration.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
        configuration.setAPIBuiltinEnabled(false);
        configuration.setDefaultEncoding("UTF-8");
        configuration.setLocale(Locale.ROOT);
        configuration.setCustomNumberFormats(Map.of(NUMBERS, NetlistNumberFormat.FACTORY));
        configuration.setNumberFormat("@" + NUMBERS);
        configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
        configuration.setLogTemplateExceptions(false);
        configuration.setLocalizedLookup(false);
    }

    /** Fills a template with numbers, words, lists, maps and records. */
    String fill(String name, Map<String, Object> values) {
        StringWriter text = new StringWriter();
        try {
            configuration.getTemplate(name).process(values, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (TemplateException e) {
            throw new IllegalStateException("the template " + name + " cannot be filled: " + e.getMessage(), e);
        }
        return text.toString();
    }
}
