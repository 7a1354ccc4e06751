#pragma once

#include <span>
#include <vector>

#include "core/floor/mesh.h"
#include "core/floor/route_search.h"
#include "core/floor/tangent.h"

namespace stopwalk::floor {

// A taut walk in closed form: from a place, by a step to `start` where that is another point, by tangents and
// arcs of a radius round the turns to `end`, and by a step in. Local coordinates.
struct Course {
  Point from, start;
  std::span<const Turn> turns;
  Point end, to;
};

// Measures courses, and draws them if asked to, one after another. What one has in common with the one before
// it, from its start on, is taken over: of many walks from one place, neighbours share nearly all of their
// way.
class CourseDrawing {
 public:
  CourseDrawing(const Mesh& mesh, bool draws) : mesh_(mesh), draws_(draws) {}

  // The course's length.
  double follow(const Course& course, double radius);
  // What was followed last, in plan coordinates: arcs as chords of 5 degrees or finer.
  const std::vector<Point>& path() const { return path_; }

 private:
  // One straight piece, to a turn.
  struct Leg {
    Turn to;
    Tangent straight;
    double turned;      // before it, round the turn that it leaves
    std::size_t drawn;  // points of the path up to its end
  };
  void takeOver(const Course& course, double radius);
  void add(Point local);
  void addRound(const Disk& disk, Point arriving, double turn);

  const Mesh& mesh_;
  bool draws_;
  Point from_, start_;
  double radius_ = 0;
  std::vector<Leg> legs_;
  std::vector<Point> path_;
};

}  // namespace stopwalk::floor
