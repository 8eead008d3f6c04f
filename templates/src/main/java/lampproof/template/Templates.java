package lampproof.template;

import freemarker.cache.ClassTemplateLoader;
import freemarker.core.TemplateClassResolver;
import freemarker.core.TemplateNumberFormatFactory;
import freemarker.template.Configuration;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import freemarker.template.Version;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.Map;

/** The templates of one folder. In those whose names end in {@code .ftlh} every text is escaped for HTML. */
public final class Templates {

    private static final Version VERSION = Configuration.VERSION_2_3_34;
    private static final String OWN = "own";

    private final Configuration configuration = new Configuration(VERSION);

    private Templates(String folder) {
        configuration.setTemplateLoader(new ClassTemplateLoader(Templates.class, "/lampproof/" + folder));
        configuration.setObjectWrapper(new RecordWrapper());
        configuration.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
        configuration.setAPIBuiltinEnabled(false);
        configuration.setDefaultEncoding("UTF-8");
        configuration.setLocale(Locale.ROOT);
        configuration.setNumberFormat("computer");
        configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
        configuration.setLogTemplateExceptions(false);
        configuration.setLocalizedLookup(false);
    }

    /** The decks, whose numbers have a format of their own. */
    public static Templates ofDecks(TemplateNumberFormatFactory numbers) {
        Templates templates = new Templates("decks");
        templates.configuration.setCustomNumberFormats(Map.of(OWN, numbers));
        templates.configuration.setNumberFormat("@" + OWN);
        return templates;
    }

    /** The pages for a reader. */
    public static Templates ofPages() {
        return new Templates("report");
    }

    /**
     * Fills a template with a map of names or a record of components.
     *
     * @throws IllegalStateException when a value is missing or cannot be written
     */
    public String fill(String name, Object values) {
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
