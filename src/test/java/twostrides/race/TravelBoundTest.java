package twostrides.race;
class TravelBoundTest {}
