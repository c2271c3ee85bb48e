// The first number and the first date that a page prints cost a browser as much as a whole
// view, since it reads its tables for the language then. Here that is done while the styles
// are on their way, not when somebody may already want to scroll.
(0.5).toLocaleString();
new Date(0).toLocaleString("default", { month: "short", minute: "2-digit" });
