package crumbtrail.web;

import java.util.stream.Stream;

/** The pages of the bake log. */
class TourOfTheLogIT extends TourChecks {
  static Stream<Tour> stops() {
    return stops(Tour::ofLog);
  }
}
