//! The fuel system: what an engine asks of it, what each part can give, and what
//! gives first.
