package crumbtrail.web;

import java.util.stream.Stream;

/** All of the tour but the bake log and the pages in German. */
class TourIT extends TourChecks {
  static Stream<Tour> stops() {
    return stops(stop -> !Tour.ofLog(stop) && !Tour.inGerman(stop));
  }
}
