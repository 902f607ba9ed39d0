//! Short words of the fourth question.

pub const CABLES: &str = "The cables";
pub const WHERE: &str = "The system is";
pub const TAKE_OFF: &str = "The two cables leave the bank";
pub const STRANDS: &str = "The conductor is made of";
pub const FUSE_KIND: &str = "Kind of main fuse";
pub const NOT_SAID: &str = "not said";
pub const ENGINE_SPACE: &str = "It passes an engine space";
pub const ENCLOSED: &str = "It runs inside a wall, conduit or duct";
pub const MIXED: &str = "Blocks of different age, make or use stand together";
pub const LAID: &str = "How it lies, and its fuse";
pub const BANK_LIMITS: &str = "What the blocks bear";
pub const FIELDS: &str = "Your cables";
