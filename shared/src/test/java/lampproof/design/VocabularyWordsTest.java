package lampproof.design;

import static org.assertj.core.api.Assertions.assertThat;

import lampproof.spec.Keyword;
import lampproof.spec.Vocabulary;
import org.junit.jupiter.api.Test;

class VocabularyWordsTest {

    @Test
    void every_word_of_a_choice_stands_for_a_constant() {
        assertWords("driver.topology", Topology.class);
        assertWords("driver.control", Law.class);
        assertWords("output.smoothing", Smoothing.class);
        assertWords("dimmer.edge", Dimming.Edge.class);
        assertWords("surge.wave", Surge.Wave.class);
        assertWords("decks.detail", Detail.class);
    }

    private static <E extends Enum<E> & Keyword> void assertWords(String choice, Class<E> type) {
        assertThat(Keyword.words(type))
                .containsExactlyElementsOf(Vocabulary.choice(choice).words());
    }
}
