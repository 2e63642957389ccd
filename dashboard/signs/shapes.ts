import type { CourseId } from "../api/types.ts";

/** The sign of each course as a path around the origin, about 16 across: disc, dome, square, split block, cross. */
export const COURSE_PATH: Readonly<Record<CourseId, string>> = {
  restore: "M-7.2 0 A7.2 7.2 0 1 1 7.2 0 A7.2 7.2 0 1 1 -7.2 0 Z",
  "make-safe": "M-8.6 5.2 V3 A8.6 8.6 0 0 1 8.6 3 V5.2 Z",
  "sell-as-found": "M-6.6 -6.6 H6.6 V6.6 H-6.6 Z",
  "break-for-parts": "M-1.6 -8 V8 H-7.4 V-8 Z M7.4 -8 V8 H1.6 V-8 Z",
  leave:
    "M-7.4 -4.6 L-4.6 -7.4 L0 -2.8 L4.6 -7.4 L7.4 -4.6 L2.8 0 L7.4 4.6 L4.6 7.4 L0 2.8 L-4.6 7.4 L-7.4 4.6 L-2.8 0 Z",
};

/** The token that holds each course's colour; it never comes without the shape and the name. */
export const COURSE_TOKEN: Readonly<Record<CourseId, string>> = {
  restore: "--course-restore",
  "make-safe": "--course-safe",
  "sell-as-found": "--course-found",
  "break-for-parts": "--course-parts",
  leave: "--course-leave",
};
