package lampproof.deck;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.LinkedHashMap;
import java.util.Map;

/** A record as nested maps of numbers, words and truths, so that a template never meets an object. */
final class RecordModel {

    private RecordModel() {}

    static Map<String, Object> of(Record value) {
        Map<String, Object> model = new LinkedHashMap<>();
        for (RecordComponent component : value.getClass().getRecordComponents()) {
            model.put(component.getName(), plain(read(component, value)));
        }
        return model;
    }

    private static Object plain(Object value) {
        if (value instanceof Record record) {
            return of(record);
        }
        return value instanceof Number || value instanceof Boolean ? value : value.toString();
    }

    private static Object read(RecordComponent component, Record value) {
        try {
            return component.getAccessor().invoke(value);
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException("cannot read " + component, e);
        }
    }
}
