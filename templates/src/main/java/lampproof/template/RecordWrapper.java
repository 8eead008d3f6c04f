package lampproof.template;

import freemarker.template.Configuration;
import freemarker.template.SimpleNumber;
import freemarker.template.SimpleObjectWrapper;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import java.util.OptionalDouble;

/**
 * Shows a template numbers, words, truths, lists and maps as they are, and a record by its components. An absent number is
 * an absent value. Every other object is refused, so a template can call nothing.
 */
public final class RecordWrapper extends SimpleObjectWrapper {

    /** A wrapper for one configuration of the template engine. */
    public RecordWrapper() {
        super(Configuration.VERSION_2_3_34);
    }

    @Override
    protected TemplateModel handleUnknownType(Object value) throws TemplateModelException {
        if (value instanceof Record record) {
            return new RecordModel(record, this);
        }
        if (value instanceof OptionalDouble number) {
            return number.isPresent() ? new SimpleNumber(number.getAsDouble()) : null;
        }
        throw new TemplateModelException("a template takes numbers, words, truths, lists, maps and records, but no "
                + value.getClass().getName());
    }
}
