package lampproof.template;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import freemarker.core.InvalidReferenceException;
import freemarker.template.Configuration;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RecordWrapperTest {

    private record Lamp(String name, double power, OptionalDouble life, List<Part> parts, Object other) {

        @SuppressWarnings("unused") // a template must not reach it
        String secret() {
            return "secret";
        }
    }

    private record Part(String name, boolean given) {}

    @Test
    void componentsAreReadByTheirNames() throws Exception {
        assertThat(fill("${name} ${power} <#list parts as p>${p.name}<#if p.given>!</#if> </#list>"))
                .isEqualTo("globe 7 bridge bus! ");
    }

    @Test
    void anAbsentNumberIsAbsent() throws Exception {
        assertThat(fill(lamp(OptionalDouble.of(25e3), ""), "${life?c}")).isEqualTo("25000");
        assertThat(fill("<#if life??>yes<#else>no</#if>")).isEqualTo("no");
        assertThatThrownBy(() -> fill("${life}")).isInstanceOf(InvalidReferenceException.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"${powr}", "${powr!0}", "<#if powr??></#if>", "<#list parts as p>${p.powr}</#list>"})
    void anUnknownComponentIsAnErrorAndNeverAbsent(String template) {
        assertThatThrownBy(() -> fill(template))
                .isInstanceOf(TemplateException.class)
                .hasMessageMatching("(?s)RecordWrapperTest\\.(Lamp|Part) has no component \"powr\"; it has name, .*");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "${secret()}",
                "${secret}",
                "${name()}",
                "${class}",
                "${getClass()}",
                "${parts[0].toString()}",
                "${parts.size()}",
                "${name.length()}",
                "${parts?api.size()}"
            })
    void noMethodCanBeCalled(String template) {
        assertThatThrownBy(() -> fill(template)).isInstanceOf(TemplateException.class);
    }

    @Test
    void everyOtherObjectIsRefused() {
        for (Object object : List.of(Path.of("lamp.csv"), Thread.State.NEW, Thread.currentThread(), Runtime.class)) {
            assertThatThrownBy(() -> fill(lamp(OptionalDouble.empty(), object), "${other}"))
                    .isInstanceOf(TemplateException.class)
                    .hasMessageContaining("a template takes numbers, words, truths, lists, maps and records, but no "
                            + object.getClass().getName());
        }
    }

    private static Lamp lamp(OptionalDouble life, Object other) {
        return new Lamp("globe", 7, life, List.of(new Part("bridge", false), new Part("bus", true)), other);
    }

    private static String fill(String template) throws IOException, TemplateException {
        return fill(lamp(OptionalDouble.empty(), Map.of()), template);
    }

    private static String fill(Lamp lamp, String template) throws IOException, TemplateException {
        Configuration configuration = new Configuration(Configuration.VERSION_2_3_34);
        configuration.setObjectWrapper(new RecordWrapper());
        configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
        configuration.setLogTemplateExceptions(false);
        StringWriter text = new StringWriter();
        new Template("test", template, configuration).process(lamp, text);
        return text.toString();
    }
}
