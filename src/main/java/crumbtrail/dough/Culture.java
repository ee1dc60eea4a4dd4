package crumbtrail.dough;

/**
 * A culture that multiplies until it has no more room: {@code dN/dt = mu N (1 - (N - base) /
 * room)}, solved in closed form, so that a schedule cut in two gives exactly what the whole gives.
 *
 * @param size what there is now, in the unit of the dose
 * @param base what there was at the start, which takes up no room
 * @param room how much more can grow
 * @param work the culture's size summed over time, each hour weighed by how hard it worked
 */
record Culture(double size, double base, double room, double work) {
  static Culture sown(double dose, double base, double room) {
    return new Culture(dose, base, room, 0);
  }

  /**
   * The culture after a while.
   *
   * @param hours how long
   * @param growth per hour, while there is room
   * @param vigour work of one unit in one hour
   */
  Culture after(double hours, double growth, double vigour) {
    double most = base + room;
    double rate = growth * most / room;
    if (size <= 0 || rate * hours < 1e-9) {
      return new Culture(size, base, room, work + size * hours * vigour);
    }
    double e = Math.exp(Math.min(700, rate * hours));
    double lack = most / size - 1;
    double sum = most / rate * Math.log((e + lack) / (1 + lack));
    return new Culture(most * e / (e + lack), base, room, work + sum * vigour);
  }
}
