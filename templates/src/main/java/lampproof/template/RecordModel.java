package lampproof.template;

import freemarker.template.ObjectWrapper;
import freemarker.template.TemplateHashModel;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.LinkedHashMap;
import java.util.Map;

/** A record as a template sees it: its components by their names. A name that it does not have is an error, never absent. */
final class RecordModel implements TemplateHashModel {

    private static final ClassValue<Map<String, Method>> ACCESSORS = new ClassValue<>() {
        @Override
        protected Map<String, Method> computeValue(Class<?> type) {
            Map<String, Method> accessors = new LinkedHashMap<>();
            for (RecordComponent component : type.getRecordComponents()) {
                Method accessor = component.getAccessor();
                accessor.setAccessible(true); // a view need not be public
                accessors.put(component.getName(), accessor);
            }
            return accessors;
        }
    };

    private final Record value;
    private final ObjectWrapper wrapper;

    RecordModel(Record value, ObjectWrapper wrapper) {
        this.value = value;
        this.wrapper = wrapper;
    }

    @Override
    public TemplateModel get(String name) throws TemplateModelException {
        Map<String, Method> accessors = ACCESSORS.get(value.getClass());
        if (!accessors.containsKey(name)) {
            throw new TemplateModelException(
                    type() + " has no component \"" + name + "\"; it has " + String.join(", ", accessors.keySet()));
        }
        try {
            return wrapper.wrap(accessors.get(name).invoke(value));
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new TemplateModelException("the component " + name + " cannot be read", e);
        }
    }

    /** Records are often nested in what makes them, which tells them apart. */
    private String type() {
        String name = value.getClass().getName();
        return name.substring(name.lastIndexOf('.') + 1).replace('$', '.');
    }

    @Override
    public boolean isEmpty() {
        return false;
    }
}
