package crumbtrail.web;

import java.util.stream.Stream;

/** The pages in German. */
class TourInGermanIT extends TourChecks {
  static Stream<Tour> stops() {
    return stops(Tour::inGerman);
  }
}
