package rungwright.region;

import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import rungwright.measure.Measure;

/**
 * What a search found: any values that {@code domains} leaves will do, a list for each list tie, and rows for
 * the set measures that one formula ties together.
 *
 * @param rows one list a measure, all of one length, blanks empty
 */
record Found(Domains domains, Map<Measure, List<OptionalLong>> rows) {
}
