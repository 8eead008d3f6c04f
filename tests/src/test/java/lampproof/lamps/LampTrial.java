package lampproof.lamps;

import java.util.List;

/**
 * What became of one lamp.
 *
 * @param lamp the lamp
 * @param refusal why the design refused it, empty when it did not
 * @param decks its decks
 */
record LampTrial(Lamp lamp, String refusal, List<DeckTrial> decks) {}
