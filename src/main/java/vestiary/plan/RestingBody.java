package vestiary.plan;

import java.util.List;

/**
 * Pieces that lie away from home, as the API writes it.
 *
 * @param at short name of the church where they lie
 * @param home short name of the church where they belong
 * @param since from when; absent if from before the dates in question
 * @param before when they are needed next; absent if nobody knows of anything
 */
record RestingBody(List<String> pieces, String at, String home, String since, String before) {}
