package lampproof.page;

import java.lang.reflect.Constructor;
import java.lang.reflect.Method;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Makes views like given ones with other words, truths and numbers, so that their templates take other branches.
 *
 * @param word stands for every word
 * @param truth stands for every truth, and decides whether numbers are large and optional ones present
 * @param depth how many lists within each other have elements, two each; those further in have none
 */
record Variation(String word, boolean truth, int depth) {

    /** Every combination of the words with truths and depths. */
    static Stream<Variation> all(List<String> words) {
        return words.stream()
                .flatMap(word -> Stream.of(true, false)
                        .flatMap(truth -> Stream.of(0, 1, 9).map(depth -> new Variation(word, truth, depth))));
    }

    /** A view of the same kind; sections keep their names. */
    Record of(Record view) {
        if (view instanceof Section section) {
            return new Section(section.id(), section.title(), section.folded(), of(section.view()));
        }
        return record(view.getClass(), view);
    }

    /** A value of a type; an example is followed where there is one. */
    private Object of(Type type, Object example) {
        if (example instanceof Record view) {
            return of(view);
        }
        if (type instanceof ParameterizedType generic && generic.getRawType() == List.class) {
            return list(generic.getActualTypeArguments()[0], (List<?>) example);
        }
        if (example instanceof Map) {
            return example;
        }
        return type instanceof Class<?> kind && kind.isRecord() ? record(kind, null) : single(type);
    }

    private List<?> list(Type type, List<?> example) {
        if (type == Section.class) {
            return example.stream().map(section -> of((Record) section)).toList();
        }
        Variation inner = new Variation(word, truth, depth - 1);
        return IntStream.range(0, depth == 0 ? 0 : 2)
                .mapToObj(k -> inner.of(type, element(example, k)))
                .toList();
    }

    /** The list may be short or missing. */
    private static Object element(List<?> list, int place) {
        return list == null || list.isEmpty() ? null : list.get(Math.min(place, list.size() - 1));
    }

    private Object single(Type type) {
        if (type == String.class) {
            return word;
        }
        if (type == boolean.class) {
            return truth;
        }
        if (type == OptionalDouble.class) {
            return truth ? OptionalDouble.of(1) : OptionalDouble.empty();
        }
        int number = truth ? 100 : 0;
        return type == int.class
                ? (Object) number
                : type == long.class ? (Object) (long) number : (Object) (double) number;
    }

    private Record record(Class<?> type, Record example) {
        RecordComponent[] components = type.getRecordComponents();
        Class<?>[] types = new Class<?>[components.length];
        Object[] values = new Object[components.length];
        try {
            for (int k = 0; k < components.length; k++) {
                types[k] = components[k].getType();
                values[k] = of(components[k].getGenericType(), example == null ? null : read(components[k], example));
            }
            Constructor<?> constructor = type.getDeclaredConstructor(types);
            constructor.setAccessible(true);
            return (Record) constructor.newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("no variation of " + type, e);
        }
    }

    private static Object read(RecordComponent component, Record example) throws ReflectiveOperationException {
        Method accessor = component.getAccessor();
        accessor.setAccessible(true);
        return accessor.invoke(example);
    }
}
