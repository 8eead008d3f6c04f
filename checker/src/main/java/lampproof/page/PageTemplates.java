package lampproof.page;

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
import lampproof.template.RecordWrapper;

/** The page templates that ship with lampproof. Their names end in {@code .ftlh}, so every text is escaped for HTML. */
final class PageTemplates {

    private static final String UNPRINTABLE = "[\\p{Cc}\\p{Cs}\\p{Cf}\\p{Co}\\p{Cn}&&[^\\n]]";
    private static final Version VERSION = Configuration.VERSION_2_3_34;

    private final Configuration configuration = new Configuration(VERSION);

    PageTemplates() {
        configuration.setTemplateLoader(new ClassTemplateLoader(PageTemplates.class, "/lampproof/report"));
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

    /** Fills the template of a page with its view; what cannot be printed is left out. */
    String fill(String name, Record values) {
        StringWriter text = new StringWriter();
        try {
            configuration.getTemplate(name).process(values, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (TemplateException e) {
            throw new IllegalStateException("the template " + name + " cannot be filled: " + e.getMessage(), e);
        }
        return text.toString().replaceAll(UNPRINTABLE, "");
    }
}
