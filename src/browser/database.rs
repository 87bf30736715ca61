//! The browser's database (IndexedDB). A text that was written is on the disk when the writing is told as
//! done, and not before.

use super::{clock, words};
use crate::record::StoreError;
use crate::record::store::silence::{Silence, TICK};
use futures_util::future::{Either, select};
use gloo_timers::future::TimeoutFuture;
use idb::event::DatabaseEvent;
use idb::{Database, Factory, ObjectStoreParams, Query, Transaction, TransactionMode, TransactionResult};
use js_sys::{Array, Function, Object, Reflect};
use std::cell::{Cell, RefCell};
use std::future::{Future, IntoFuture};
use std::pin::pin;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{IdbDatabase, IdbRequest, IdbTransaction};

/// Its name among the databases of this address.
const NAME: &str = "haulm";
/// Its version; a later one has more stores.
const VERSION: u32 = 2;
/// So many texts are read in one go: a key typed meanwhile waits no longer.
const AT_ONCE: u32 = 200;

/// An object store of the database: values by their key.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ObjectStore {
    /// Revisions, trials, checks and binder systems, which never change.
    Records,
    /// The open documents, for when the browser ends before local storage is on the disk, or that is full.
    Drafts,
    /// Handles of files that the person chose.
    Files,
}

impl ObjectStore {
    const ALL: [Self; 3] = [Self::Records, Self::Drafts, Self::Files];

    const fn name(self) -> &'static str {
        match self {
            Self::Records => "records",
            Self::Drafts => "drafts",
            Self::Files => "files",
        }
    }
}

/// When a writing is told as done.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Durability {
    /// Once it is on the disk.
    Strict,
    /// Once the operating system has it.
    Relaxed,
}

impl Durability {
    const fn name(self) -> &'static str {
        match self {
            Self::Strict => "strict",
            Self::Relaxed => "relaxed",
        }
    }
}

/// Something to write: a value under its key, or none to remove what is there.
pub type Write = (String, Option<JsValue>);

thread_local! {
    static CONNECTION: RefCell<Option<Connection>> = const { RefCell::new(None) };
    /// The connection was closed, by another tab's upgrade, or because the database was deleted.
    static CLOSED: Cell<bool> = const { Cell::new(false) };
}

/// All keys of an object store.
///
/// # Errors
/// When the database is not there, or does not answer.
pub async fn keys(of: ObjectStore) -> Result<Vec<String>, StoreError> {
    within(async {
        let store = begin(of, None).await?.object_store(of.name())?;
        let keys = answer(store.get_all_keys(None, None)?).await?;
        Ok(keys.iter().filter_map(JsValue::as_string).collect())
    })
    .await
}

/// What is under the keys, in their order.
///
/// # Errors
/// When the database is not there, or does not answer.
pub async fn read(of: ObjectStore, keys: &[String]) -> Result<Vec<Option<JsValue>>, StoreError> {
    within(async {
        let store = begin(of, None).await?.object_store(of.name())?;
        let mut found = Vec::with_capacity(keys.len());
        for key in keys {
            found.push(answer(store.get(Query::Key(key.as_str().into()))?).await?);
        }
        Ok(found)
    })
    .await
}

/// Texts with their keys, behind the key `after`; some hundreds at most. None are left when
/// nothing comes.
///
/// # Errors
/// When the database is not there, or does not answer.
pub async fn texts(of: ObjectStore, after: Option<&str>) -> Result<Vec<(String, String)>, StoreError> {
    within(async {
        let store = begin(of, None).await?.object_store(of.name())?;
        let range = || -> Result<Option<Query>, Failure> {
            let behind = |after: &str| idb::KeyRange::lower_bound(&after.into(), Some(true));
            Ok(after.map(behind).transpose()?.map(Query::KeyRange))
        };
        let keys = store.get_all_keys(range()?, Some(AT_ONCE))?;
        let values = store.get_all(range()?, Some(AT_ONCE))?;
        let (keys, values) = (answer(keys).await?, answer(values).await?);
        let text = |(key, value): (JsValue, JsValue)| Some((key.as_string()?, value.as_string().unwrap_or_default()));
        Ok(keys.into_iter().zip(values).filter_map(text).collect())
    })
    .await
}

/// Writes all or nothing, and waits until that is done.
///
/// # Errors
/// When there is no room, or the database is not there, or does not answer. What does not answer may still
/// be written later.
pub async fn write(to: ObjectStore, writes: &[Write], durability: Durability) -> Result<(), StoreError> {
    within(async {
        let transaction = begin(to, Some(durability)).await?;
        let store = transaction.object_store(to.name())?;
        for (key, value) in writes {
            // The transaction as a whole is waited for, and fails with each of them.
            let key = JsValue::from(key.as_str());
            match value {
                Some(value) => drop(store.put(value, Some(&key))?),
                None => drop(store.delete(Query::Key(key))?),
            }
        }
        let raw = IdbTransaction::from(transaction);
        let _unheard = UnheardTransaction(raw.clone());
        match Transaction::from(raw.clone()).await {
            Ok(TransactionResult::Committed) => Ok(()),
            Ok(TransactionResult::Aborted) | Err(_) => {
                Err(Failure(raw.error().map_or(StoreError::Other(String::new()), |error| reason(&error))))
            }
        }
    })
    .await
}

/// Bytes that this browser lets the app keep, about; `None` where it does not tell.
pub async fn room() -> Option<u64> {
    let told = JsFuture::from(super::storage::manager()?.estimate().ok()?).await.ok()?;
    let quota = Reflect::get(&told, &"quota".into()).ok()?.as_f64()?;
    // Whole, from 0 up and below 2⁵³.
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    let quota = quota as u64;
    Some(quota)
}

/// Why a step failed. Errors of the database's crate become the store's own on the way.
struct Failure(StoreError);

impl From<idb::Error> for Failure {
    fn from(error: idb::Error) -> Self {
        Self(StoreError::Other(error.to_string()))
    }
}

impl From<JsValue> for Failure {
    fn from(error: JsValue) -> Self {
        Self(reason(&error))
    }
}

/// Tells a full disk from anything else by the exception's name (W3C Indexed Database API 3.0).
fn reason(error: &JsValue) -> StoreError {
    let name = Reflect::get(error, &"name".into()).ok().and_then(|name| name.as_string());
    match name.as_deref() {
        Some("QuotaExceededError") => StoreError::Full,
        Some("SecurityError" | "InvalidAccessError") => StoreError::Blocked,
        _ => StoreError::Other(words(error)),
    }
}

/// What a request answers.
async fn answer<R: IntoFuture + From<IdbRequest> + Into<IdbRequest>>(request: R) -> R::Output {
    let raw: IdbRequest = request.into();
    let _unheard = UnheardRequest(raw.clone());
    R::from(raw).await
}

/// Takes the closures off a request when it goes: an answer that comes after the wait was given up would
/// call closures that are gone, which throws.
struct UnheardRequest(IdbRequest);

impl Drop for UnheardRequest {
    fn drop(&mut self) {
        self.0.set_onsuccess(None);
        self.0.set_onerror(None);
    }
}

/// The same for a transaction, which tells of its abortion after it has told of the error.
struct UnheardTransaction(IdbTransaction);

impl Drop for UnheardTransaction {
    fn drop(&mut self) {
        self.0.set_oncomplete(None);
        self.0.set_onabort(None);
        self.0.set_onerror(None);
    }
}

async fn within<T>(step: impl Future<Output = Result<T, Failure>>) -> Result<T, StoreError> {
    match select(pin!(step), pin!(silence())).await {
        Either::Left((outcome, _)) => outcome.map_err(|Failure(why)| why),
        Either::Right(_) => Err(StoreError::Silent),
    }
}

/// Ends when the database has said nothing for too long, by the machine's own speed.
async fn silence() {
    let mut silence = Silence::new(clock::now());
    loop {
        TimeoutFuture::new(TICK).await;
        if silence.tick(clock::now()) {
            return;
        }
    }
}

/// Begins a transaction, to write where a durability is given. A connection that went is opened again first.
async fn begin(on: ObjectStore, writing: Option<Durability>) -> Result<Transaction, Failure> {
    if CLOSED.replace(false) {
        CONNECTION.take();
    }
    let there =
        CONNECTION.with_borrow(|there| there.as_ref().and_then(|connection| connection.begin(on, writing).ok()));
    if let Some(transaction) = there {
        return Ok(transaction);
    }
    let connection = Connection::open().await?;
    let transaction = connection.begin(on, writing);
    CONNECTION.replace(Some(connection));
    transaction
}

struct Connection {
    database: Database,
    /// The same as the browser's own object: the crate has no way to choose the durability.
    raw: IdbDatabase,
}

/// Two steps at once may each open one. The one that is not kept must not hold up another tab's upgrade.
impl Drop for Connection {
    fn drop(&mut self) {
        self.raw.close();
    }
}

impl Connection {
    async fn open() -> Result<Self, Failure> {
        let factory = Factory::new().map_err(|_| Failure(StoreError::Blocked))?;
        let mut request = factory.open(NAME, Some(VERSION))?;
        request.on_upgrade_needed(|event| {
            let Ok(database) = event.database() else { return };
            let there = database.store_names();
            for store in ObjectStore::ALL.into_iter().filter(|store| !there.iter().any(|name| name == store.name())) {
                // What fails here fails the opening.
                _ = database.create_object_store(store.name(), ObjectStoreParams::new());
            }
        });
        let raw = IdbDatabase::from(request.await?);
        let mut database = Database::from(raw.clone());
        let leaving = raw.clone();
        database.on_version_change(move |_| {
            // Another tab upgrades or deletes it, and waits for this.
            leaving.close();
            CLOSED.set(true);
        });
        database.on_close(|_| CLOSED.set(true));
        Ok(Self { database, raw })
    }

    fn begin(&self, on: ObjectStore, writing: Option<Durability>) -> Result<Transaction, Failure> {
        let Some(durability) = writing else {
            return Ok(self.database.transaction(&[on.name()], TransactionMode::ReadOnly)?);
        };
        let options = Object::new();
        Reflect::set(&options, &"durability".into(), &durability.name().into())?;
        let begin: Function = Reflect::get(&self.raw, &"transaction".into())?.unchecked_into();
        let arguments = Array::of3(&on.name().into(), &"readwrite".into(), &options);
        Ok(begin.apply(&self.raw, &arguments)?.unchecked_into::<IdbTransaction>().into())
    }
}
